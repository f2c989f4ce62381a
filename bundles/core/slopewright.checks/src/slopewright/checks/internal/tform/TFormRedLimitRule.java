package slopewright.checks.internal.tform;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Words;
import slopewright.siting.Colour;
import slopewright.siting.SectorEdge;
import slopewright.siting.Trait;
import slopewright.siting.UnitPlan;
import slopewright.standards.CitedValue;

/** Red begins at a fixed angle or higher. */
public final class TFormRedLimitRule extends AidRule {

    /** Made by the service loader. */
    public TFormRedLimitRule() {
        super("TF-06", Severity.FAIL, Trait.LEGS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        CitedValue limit = facts.angle("red-limit");
        double accuracy = facts.angle("setting-accuracy").value();
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (UnitPlan unit : facts.laid().units()) {
            if (unit.bar() != 3) {
                double red = unit.edges().stream().filter(edge -> edge.below().colour() == Colour.RED)
                        .mapToDouble(SectorEdge::angleDeg).findFirst()
                        .orElse(Double.NEGATIVE_INFINITY);
                lowest = Math.min(lowest, red);
                highest = Math.max(highest, red);
            }
        }
        if (lowest == Double.NEGATIVE_INFINITY) {
            decide(findings, facts.aid(), false, limit.citation(), "A wing bar or fly-up unit shows no red.", "Enter its red sector.");
            return;
        }
        double value = Math.abs(lowest - limit.value()) <= accuracy ? limit.value() : lowest;
        boolean even = highest - lowest <= 2 * accuracy;
        Measure measure = even ? Measure.atLeast(value, limit.value(), "deg") : new Measure(value, limit.value(), lowest - highest, "deg", Measure.ANGLE_DEG);
        compare(findings, facts.aid(), measure, limit.citation(), "Red ends at " + Words.deg(lowest)
                + (even ? "" : " to " + Words.deg(highest))
                + "; it ends at " + Words.deg(limit.value()) + ", or higher where obstacles ask for it.",
                even ? "Raise the red limit." : "Give all wing bar and fly-up units the same red limit.");
    }
}
