package slopewright.checks.internal.plausible;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Words;
import slopewright.model.ApproachHost;
import slopewright.model.GlidePathAid;
import slopewright.model.util.Projects;
import slopewright.siting.ElementNames;

/**
 * The antenna of an electronic glide path stands beside the runway, from 60 to 200 metres from the centre line (Annex 10 practice is
 * around 120 m; own band), abreast of where the path meets the level of the threshold, to a fifth of that distance, which is what the
 * ground before the antenna takes or gives (own band). A warning: the height over the threshold is measured in flight.
 */
public final class GlidePathSiteRule extends ProjectRule {
    private static final double NEAR_M = 60;
    private static final double FAR_M = 200;
    private static final double SHARE = 0.2;

    /** Made by the service loader. */
    public GlidePathSiteRule() {
        super("DATA-60", Severity.WARNING);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        for (ApproachHost host : Projects.hosts(evaluation.project())) {
            if (host.getGlidePath() != null) {
                check(host, host.getGlidePath(), outcomes);
            }
        }
    }

    private static void check(ApproachHost host, GlidePathAid path, OutcomeCollector outcomes) {
        if (path.getAntennaRightM() != null) {
            double beside = Math.abs(path.getAntennaRightM());
            outcomes.about(path).measured(Measure.between(beside, NEAR_M, FAR_M, "m"))
                    .saying("beside", ElementNames.of(host), Words.m(beside), Words.m(NEAR_M), Words.m(FAR_M)).advising("correct").add();
        }
        if (path.getAntennaAlongM() != null && path.getReferenceDatumHeightM() != null && path.getPathAngleDeg() != null
                && path.getPathAngleDeg() > 0) {
            double origin = path.getReferenceDatumHeightM() / Math.tan(Math.toRadians(path.getPathAngleDeg()));
            outcomes.about(path).measured(Measure.within(path.getAntennaAlongM(), origin, origin * SHARE, "m"))
                    .step("path-origin", Words.m(path.getReferenceDatumHeightM()), Words.deg(path.getPathAngleDeg()), Words.m(origin))
                    .saying("abreast", ElementNames.of(host), Words.m(path.getAntennaAlongM()), Words.m(origin), Words.m(origin * SHARE))
                    .advising("correct").add();
        }
    }
}
