package slopewright.checks.internal.glidepath;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Words;
import slopewright.model.GlidePathAid;
import slopewright.standards.CitedValue;

/** Both aids cross the threshold at nearly the same height. */
public final class GlidePathHeightRule extends AidRule {

    /** Made by the service loader. */
    public GlidePathHeightRule() {
        super("ILS-02", Severity.WARNING);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        GlidePathAid path = facts.host().getGlidePath();
        if (path == null || !facts.atRunway()) {
            return;
        }
        CitedValue limit = facts.common("coincidence.height-m");
        double reference = AidFacts.need(path.getReferenceDatumHeightM(), "reference datum height of the glide path");
        double height = facts.laid().mehtM();
        compare(findings, facts.aid(), Measure.within(height, reference, limit.value(), "m"),
                limit.citation(),
                "The lowest on-course signal crosses the threshold at " + Words.mFt(height) + ", the glide path at " + Words.mFt(reference)
                        + "; " + Words.mFt(limit.value()) + " of difference are allowed.",
                "Move the indicator, or publish that the two aids do not coincide.");
    }
}
