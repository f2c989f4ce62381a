package slopewright.checks.internal.tform;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** The on-slope eye height of a T form may be chosen within a range. */
public final class TFormEyeHeightRule extends AidRule {

    /** Made by the service loader. */
    public TFormEyeHeightRule() {
        super("TF-04", Severity.FAIL, Trait.LEGS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        CitedValue from = facts.length("eye-height-from");
        CitedValue to = facts.length("eye-height-to");
        double height = facts.nominalEyeHeightM();
        Measure measure = height - from.value() < to.value() - height ? Measure.atLeast(height, from.value(), "m")
                : Measure.atMost(height, to.value(), "m");
        compare(findings, facts.aid(), measure, OutcomeCollector.weakest(List.of(from.citation(), to.citation())), "On the slope the eye passes "
                + Words.mFt(height) + " over the threshold; " + Words.m(from.value()) + " to " + Words.m(to.value()) + " may be chosen.",
                "Move the wing bar with its legs.");
    }
}
