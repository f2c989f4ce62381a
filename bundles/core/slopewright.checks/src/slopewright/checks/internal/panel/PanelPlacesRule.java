package slopewright.checks.internal.panel;

import java.util.Comparator;
import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.messages.Words;
import slopewright.siting.Trait;

/**
 * The rear panel stands between the front ones, as seen along the approach. Severity fail: a panel that stands beside them is not brought
 * into line with them, and nobody sees whether it stands above or below.
 */
public final class PanelPlacesRule extends AidRule {

    /** Made by the service loader. */
    public PanelPlacesRule() {
        super("PANEL-04", Severity.FAIL, Trait.PANELS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        List<UnitAt> front = facts.bar(1);
        UnitAt rear = facts.bar(2).stream().min(Comparator.comparingDouble(unit -> insideM(unit, front))).orElseThrow();
        double inside = insideM(rear, front);
        outcomes.about(facts.aid()).measured(Measure.atLeast(inside, 0, "m").strict())
                .saying(inside > 0 ? "between" : "beside", rear.name(), Words.m(Math.abs(inside))).advising("move").add();
    }

    /** Returns how far a panel stands inside of the nearer of the outermost front panels, negative by how far outside. */
    private static double insideM(UnitAt panel, List<UnitAt> front) {
        double left = front.stream().mapToDouble(UnitAt::rightM).min().orElseThrow();
        double right = front.stream().mapToDouble(UnitAt::rightM).max().orElseThrow();
        return Math.min(panel.rightM() - left, right - panel.rightM());
    }
}
