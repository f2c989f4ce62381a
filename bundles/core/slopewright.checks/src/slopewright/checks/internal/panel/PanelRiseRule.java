package slopewright.checks.internal.panel;

import java.util.Comparator;
import java.util.Set;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Words;
import slopewright.geometry.Angles;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** The front panels stand higher by what the slope rises. */
public final class PanelRiseRule extends AidRule {

    /** Made by the service loader. */
    public PanelRiseRule() {
        super("PANEL-02", Severity.FAIL, Trait.PANELS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        CitedValue resolution = facts.angle("resolution");
        double slope = facts.laid().slopeDeg();
        double apart = facts.barAlongM(2) - facts.barAlongM(1);
        double rear = facts.bar(2).stream().mapToDouble(UnitAt::lensElevationM).average().orElseThrow();
        double wanted = apart * Angles.tanDeg(slope);
        double tolerance = apart * (Angles.tanDeg(slope + resolution.value()) - Angles.tanDeg(slope));
        UnitAt worst = facts.bar(1).stream().max(Comparator.comparingDouble(unit -> Math.abs(unit.lensElevationM() - rear - wanted)))
                .orElseThrow();
        double rise = worst.lensElevationM() - rear;
        compare(findings, facts.aid(), Measure.within(rise, wanted, Math.abs(tolerance), "m"),
                resolution.citation(),
                worst.label() + " stands " + Words.mm(rise) + " higher than the rear panel, " + Words.m(apart) + " before it; the slope of "
                        + Words.deg(slope) + " gives " + Words.mm(wanted) + ".", "Set it " + Words.mm(wanted)
                        + " higher than the rear panel.");
    }
}
