package slopewright.checks.internal;

import java.util.Comparator;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.standards.CitedValue;

/** The units nearest to the runway keep their distance from its edge. */
public final class BarEdgeDistanceRule extends AidRule {

    /** Made by the service loader. */
    public BarEdgeDistanceRule() {
        super("BAR-07", "Inner unit to runway edge",
                "The inner unit of every bar stands no closer to the runway edge than the rule set allows.",
                Severity.FAIL, BARS);
    }

    @Override
    void check(AidFacts facts, Findings findings) {
        CitedValue least = facts.length("inner-unit-to-edge");
        double half = facts.halfWidthM();
        UnitAt nearest = facts.units().stream().min(Comparator.comparingDouble(unit -> Math.abs(unit.rightM()))).orElseThrow();
        double distance = SettingOut.length(Math.abs(nearest.rightM()) - half, least.value());
        compare(findings, facts.aid(), Measure.atLeast(distance, least.value(), "m"), least.citation(), nearest.label() + " stands "
                + Words.m(distance) + " from the runway edge; at least " + Words.m(least.value()) + " are needed.",
                "Move the bar outward.");
    }
}
