package slopewright.checks.internal.panel;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Worst;
import slopewright.geometry.Angles;
import slopewright.messages.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** The front panels stand higher by what the slope rises. Severity fail: another rise is another slope. */
public final class PanelRiseRule extends AidRule {

    /** Made by the service loader. */
    public PanelRiseRule() {
        super("PANEL-02", Severity.FAIL, Trait.PANELS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue resolution = facts.angle("resolution");
        double slope = facts.slopeDeg();
        double apart = facts.barAlongM(2) - facts.barAlongM(1);
        double rear = facts.bar(2).stream().mapToDouble(UnitAt::lensElevationM).average().orElseThrow();
        double wanted = apart * Angles.tanDeg(slope);
        double tolerance = Math.abs(apart * (Angles.tanDeg(slope + resolution.value()) - Angles.tanDeg(slope)));
        Worst<UnitAt> worst = Worst.of(facts.bar(1), unit -> Measure.within(unit.lensElevationM() - rear, wanted, tolerance, "m"));
        outcomes.about(facts.aid()).measured(worst.measure()).resting(resolution)
                .saying("rise", worst.item().name(), Words.mm(worst.item().lensElevationM() - rear), Words.m(apart), Words.deg(slope),
                        Words.mm(wanted), Words.mm(tolerance))
                .advising("set", Words.mm(wanted))
                .step("rise", Words.m(apart), Words.deg(slope), Words.mm(wanted)).add();
    }
}
