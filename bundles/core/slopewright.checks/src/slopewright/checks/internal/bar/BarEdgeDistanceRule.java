package slopewright.checks.internal.bar;

import java.util.Comparator;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** The units nearest to the runway keep their distance from its edge. */
public final class BarEdgeDistanceRule extends AidRule {

    /** Made by the service loader. */
    public BarEdgeDistanceRule() {
        super("BAR-07", Severity.FAIL, Trait.BARS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        CitedValue least = facts.length("inner-unit-to-edge");
        double half = facts.halfWidthM();
        UnitAt nearest = facts.units().stream().min(Comparator.comparingDouble(unit -> Math.abs(unit.rightM()))).orElseThrow();
        double distance = Math.abs(nearest.rightM()) - half;
        compare(findings, facts.aid(), Measure.atLeast(distance, least.value(), "m"), least.citation(), nearest.label() + " stands "
                + Words.m(distance) + " from the runway edge; at least " + Words.m(least.value()) + " are needed.",
                "Move the bar outward.");
    }
}
