package slopewright.checks.internal.obstacle;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.Attempt;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.Uncompared;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.SurveyBlock;
import slopewright.siting.ElementNames;
import slopewright.standards.Citation;

/**
 * Bulk survey points are compared with the obstacle surfaces like obstacles, and a point that stands through one is as grave. No review
 * note takes the place of the comparison. Severity fail, as for an obstacle.
 */
public final class SurveyBlockObstaclesRule extends ProjectRule {
    /** Made by the service loader. */
    public SurveyBlockObstaclesRule() {
        super("OBS-06", Severity.FAIL);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        for (SurveyBlock block : evaluation.project().getSurveyBlocks()) {
            evaluation.aids().stream().filter(AidEvaluation::isCovered).forEach(aid -> compare(block, aid, outcomes));
        }
    }

    private static void compare(SurveyBlock block, AidEvaluation aid, OutcomeCollector outcomes) {
        Argument blockName = ElementNames.of(block);
        Argument aidName = ElementNames.of(aid.aid());
        Attempt<SurfaceComparison> compared = aid.obstacles();
        if (compared.value().isEmpty()) {
            outcomes.notEvaluated(block, List.of(Message.of("missing.surface-of", aidName)),
                    Message.of("OBS-06.no-surface", blockName, aidName, compared.reason().orElseThrow()));
            return;
        }
        SurfaceComparison found = compared.value().get();
        for (Uncompared uncompared : found.uncompared()) {
            if (uncompared.element() == block) {
                outcomes.notEvaluated(block, List.of(Message.of("missing.points-of", blockName)),
                        Message.of("OBS-06.unread", blockName, aidName, uncompared.reason()));
                return;
            }
        }
        List<Citation> citations = Surfaces.citations(aid.siting().orThrow().surface().orElseThrow(), aid.rules());
        found.of(block).ifPresentOrElse(inside -> {
            ObstacleComparison.BlockCount count = inside.block().orElseThrow();
            outcomes.about(block).measured(Measure.atLeast(inside.marginM(), 0, "m").strict()).citing(citations)
                    .saying(inside.isPenetrating() ? "above" : "below", Words.count(count.points()), blockName, Words.count(count.inside()),
                            aidName, Words.name(count.point()), Words.m(-inside.worst().point().alongM()),
                            Words.margin(Math.abs(inside.marginM())),
                            Words.count(count.above()))
                    .advising("lower").add();
        }, () -> outcomes.about(block).met(true).citing(citations).saying("outside", blockName, aidName).add());
    }
}
