package slopewright.checks.internal.tform;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.messages.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/**
 * The on-slope eye height of a T form may be chosen within a range. Severity fail: below it wheels do not clear the threshold, above it
 * the landing distance is gone.
 */
public final class TFormEyeHeightRule extends AidRule {

    /** Made by the service loader. */
    public TFormEyeHeightRule() {
        super("TF-04", Severity.FAIL, Trait.LEGS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue from = facts.length("eye-height-from");
        CitedValue to = facts.length("eye-height-to");
        double height = facts.nominalEyeHeightM();
        outcomes.about(facts.aid()).measured(Measure.between(height, from.value(), to.value(), "m")).resting(from, to)
                .saying("height", Words.mFt(height), Words.m(from.value()), Words.m(to.value())).advising("move").add();
    }
}
