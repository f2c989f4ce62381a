package slopewright.checks.internal;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.model.GlidePathAid;
import slopewright.standards.CitedValue;

/** Both aids cross the threshold at nearly the same height. */
public final class GlidePathHeightRule extends AidRule {

    /** Made by the service loader. */
    public GlidePathHeightRule() {
        super("ILS-02", "Crossing height against the glide path",
                "The lowest on-course signal and the electronic glide path cross the threshold at heights that differ by no more than the"
                + " rule set allows.",
                Severity.WARNING, ALL);
    }

    @Override
    void check(AidFacts facts, Findings findings) {
        GlidePathAid path = facts.host().getGlidePath();
        if (path == null || !facts.atRunway()) {
            return;
        }
        CitedValue limit = facts.common("coincidence.height-m");
        double reference = AidFacts.need(path.getReferenceDatumHeightM(), "reference datum height of the glide path");
        double height = facts.laid().eyeHeightM();
        compare(findings, facts.aid(), Measure.within(SettingOut.height(height, reference), reference, limit.value(), "m"),
                limit.citation(),
                "The lowest on-course signal crosses the threshold at " + Words.mFt(height) + ", the glide path at " + Words.mFt(reference)
                        + "; " + Words.mFt(limit.value()) + " of difference are allowed.",
                "Move the indicator, or publish that the two aids do not coincide.");
    }
}
