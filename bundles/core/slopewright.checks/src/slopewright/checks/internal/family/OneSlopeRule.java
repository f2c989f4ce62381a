package slopewright.checks.internal.family;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.geometry.Angles;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachAid;
import slopewright.siting.ElementNames;
import slopewright.siting.Siting;

/**
 * Two indicators of one approach show one slope. Own bands: their slopes differ by no more than 3 minutes, the width of a change of
 * colour, and their paths by no more than 1 m over the threshold or the middle of a pad, about what half an on-slope sector of 20 minutes
 * spans 300 m away (0.87 m). A failure: a pilot who sees both is told two things, and follows the lower.
 */
public final class OneSlopeRule extends ProjectRule {
    private static final double SLOPE_MIN = 3;
    private static final double PATH_M = 1;

    /** Made by the service loader. */
    public OneSlopeRule() {
        super("FAM-05", Severity.FAIL);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        for (AidEvaluation aid : evaluation.aids()) {
            AidRule.guarded(aid.aid(), outcomes, () -> check(evaluation, aid, outcomes));
        }
    }

    private static void check(ProjectEvaluation evaluation, AidEvaluation aid, OutcomeCollector outcomes) {
        if (aid.host().getAids().size() == 1) {
            outcomes.notApplicable(aid.aid(), Message.of("DATA-22.only", ElementNames.of(aid.host())));
            return;
        }
        for (ApproachAid beside : aid.host().getAids()) {
            if (beside != aid.aid()) {
                compare(aid, evaluation.aid(beside), outcomes);
            }
        }
    }

    private static void compare(AidEvaluation aid, AidEvaluation beside, OutcomeCollector outcomes) {
        double slope = slopeDeg(aid);
        double other = slopeDeg(beside);
        double apartMin = Angles.degToMinutes(Math.abs(slope - other));
        if (apartMin > SLOPE_MIN) {
            outcomes.about(aid.aid()).measured(Measure.atMost(apartMin, SLOPE_MIN, "min"))
                    .saying("slopes", ElementNames.of(beside.aid()), Words.degrees(other), Words.degrees(slope)).advising("remove").add();
            return;
        }
        double height = pathM(aid, slope);
        double heightBeside = pathM(beside, other);
        outcomes.about(aid.aid()).measured(Measure.atMost(Math.abs(height - heightBeside), PATH_M, "m"))
                .saying("paths", ElementNames.of(beside.aid()), Words.m(heightBeside), Words.m(height)).advising("remove").add();
    }

    private static double slopeDeg(AidEvaluation aid) {
        return AidFacts.need(aid.aid().getSlopeDeg(), Message.of("missing.slope-of", ElementNames.of(aid.aid())));
    }

    /** Returns how high the path stands over the origin of the frame, metres. */
    private static double pathM(AidEvaluation aid, double slopeDeg) {
        Siting siting = new AidFacts(aid).laid();
        return siting.reference().heightM() + siting.reference().alongM() * Angles.tanDeg(slopeDeg);
    }
}
