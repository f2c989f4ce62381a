package slopewright.checks.internal.eye;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Words;
import slopewright.standards.CitedValue;

/** Crossing heights lie in a usual range. */
public final class CrossingRangeRule extends AidRule {

    /** Made by the service loader. */
    public CrossingRangeRule() {
        super("EYE-02", Severity.WARNING);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        if (!facts.atRunway()) {
            return;
        }
        CitedValue least = facts.common("crossing-height.least-m");
        CitedValue most = facts.common("crossing-height.most-m");
        double height = facts.laid().mehtM();
        Measure measure = height - least.value() < most.value() - height ? Measure.atLeast(height, least.value(), "m")
                : Measure.atMost(height, most.value(), "m");
        compare(findings, facts.aid(), measure, OutcomeCollector.weakest(List.of(least.citation(), most.citation())),
                "The lowest on-course signal crosses the threshold at " + Words.mFt(height) + "; normal are " + Words.mFt(least.value())
                        + " to "
                        + Words.mFt(most.value()) + ".", "Move the indicator, or justify the height.");
    }
}
