package slopewright.checks.internal.glidepath;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.GlidePathAid;
import slopewright.standards.CitedValue;

/** Both aids cross the threshold at nearly the same height. A warning: the difference may be published. */
public final class GlidePathHeightRule extends AidRule {
    /** Made by the service loader. */
    public GlidePathHeightRule() {
        super("ILS-02", Severity.WARNING);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        GlidePathAid path = GlidePaths.atRunway(facts);
        CitedValue limit = facts.common("coincidence.height-m");
        Double entered = path.getReferenceDatumHeightM();
        double reference = entered == null ? heightM(facts, path) : entered;
        double height = facts.laid().mehtM();
        outcomes.about(facts.aid()).measured(Measure.within(height, reference, limit.value(), "m")).resting(limit)
                .saying("compared", Words.mFt(height), Words.mFt(reference), Words.mFt(limit.value())).advising("move").add();
    }

    private static double heightM(AidFacts facts, GlidePathAid path) {
        AidFacts.need(path.getPathAngleDeg(), Message.of("missing.glide-path-angle"));
        return GlidePaths.overThreshold(facts).heightM();
    }
}
