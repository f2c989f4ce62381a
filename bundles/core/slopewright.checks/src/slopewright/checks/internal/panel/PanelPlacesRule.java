package slopewright.checks.internal.panel;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Worst;
import slopewright.messages.Words;
import slopewright.siting.Trait;

/**
 * The rear panel stands in the middle between the front ones, as seen along the approach, to a quarter of how far those are apart (own
 * band). Severity fail: a panel that stands beside them, or far from one of them, is not brought into line with them, and nobody sees
 * whether it stands above or below.
 */
public final class PanelPlacesRule extends AidRule {
    private static final double ALLOWED_SHARE = 0.25;

    /** Made by the service loader. */
    public PanelPlacesRule() {
        super("PANEL-04", Severity.FAIL, Trait.PANELS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        List<UnitAt> front = facts.bar(1);
        double left = front.stream().mapToDouble(UnitAt::rightM).min().orElseThrow();
        double right = front.stream().mapToDouble(UnitAt::rightM).max().orElseThrow();
        Worst<UnitAt> worst = Worst.of(facts.bar(2), rear -> Measure.within(rear.rightM(), (left + right) / 2,
                (right - left) * ALLOWED_SHARE, "m"));
        outcomes.about(facts.aid()).measured(worst.measure())
                .saying("compared", worst.item().name(), Words.m(worst.measure().value()), Words.m(right - left),
                        Words.m(worst.measure().limit()))
                .advising("move").add();
    }
}
