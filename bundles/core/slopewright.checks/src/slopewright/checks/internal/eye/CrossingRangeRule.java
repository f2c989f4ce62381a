package slopewright.checks.internal.eye;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.messages.Words;
import slopewright.siting.Siting;
import slopewright.standards.CitedValue;

/** Crossing heights lie in a usual range. A warning: another height may be right where it is justified. */
public final class CrossingRangeRule extends AidRule {
    /** Made by the service loader. */
    public CrossingRangeRule() {
        super("EYE-02", Severity.WARNING);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        facts.end();
        CitedValue least = facts.common("crossing-height.least-m");
        CitedValue most = facts.common("crossing-height.most-m");
        Siting laid = facts.laid();
        outcomes.about(facts.aid()).measured(Measure.between(laid.mehtM(), least.value(), most.value(), "m")).resting(least, most)
                .steps(MinimumEyeHeight.steps(laid))
                .saying("compared", Words.mFt(laid.mehtM()), Words.mFt(least.value()), Words.mFt(most.value())).advising("move").add();
    }
}
