package slopewright.checks.internal;

import java.util.List;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.standards.CitedValue;

/** The on-slope eye height of a T form may be chosen within a range. */
public final class TFormEyeHeightRule extends AidRule {

    /** Made by the service loader. */
    public TFormEyeHeightRule() {
        super("TF-04", "On-slope eye height", "The eye height over the threshold on the slope lies in the range in which it may be chosen.",
                Severity.FAIL, T_FORMS);
    }

    @Override
    void check(AidFacts facts, Findings findings) {
        CitedValue from = facts.length("eye-height-from");
        CitedValue to = facts.length("eye-height-to");
        double height = SettingOut.height(SettingOut.height(facts.laid().eyeHeightM(), from.value()), to.value());
        Measure measure = height - from.value() < to.value() - height ? Measure.atLeast(height, from.value(), "m")
                : Measure.atMost(height, to.value(), "m");
        compare(findings, facts.aid(), measure, Findings.weakest(List.of(from.citation(), to.citation())), "On the slope the eye passes "
                + Words.mFt(height) + " over the threshold; " + Words.m(from.value()) + " to " + Words.m(to.value()) + " may be chosen.",
                "Move the wing bar with its legs.");
    }
}
