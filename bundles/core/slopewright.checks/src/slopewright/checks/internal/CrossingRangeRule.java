package slopewright.checks.internal;

import java.util.List;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.standards.CitedValue;

/** Crossing heights lie in a usual range. */
public final class CrossingRangeRule extends AidRule {

    /** Made by the service loader. */
    public CrossingRangeRule() {
        super("EYE-02", "Crossing height within the usual range",
                "The height of the lowest on-course signal over the threshold lies in the range that the rule set calls normal.",
                Severity.WARNING, ALL);
    }

    @Override
    void check(AidFacts facts, Findings findings) {
        if (!facts.atRunway()) {
            return;
        }
        CitedValue least = facts.common("crossing-height.least-m");
        CitedValue most = facts.common("crossing-height.most-m");
        double height = SettingOut.height(SettingOut.height(facts.laid().eyeHeightM(), least.value()), most.value());
        Measure measure = height - least.value() < most.value() - height ? Measure.atLeast(height, least.value(), "m")
                : Measure.atMost(height, most.value(), "m");
        compare(findings, facts.aid(), measure, Findings.weakest(List.of(least.citation(), most.citation())),
                "The lowest on-course signal crosses the threshold at " + Words.mFt(height) + "; normal are " + Words.mFt(least.value())
                        + " to "
                        + Words.mFt(most.value()) + ".", "Move the indicator, or justify the height.");
    }
}
