package slopewright.checks.internal.data;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.Missing;
import slopewright.checks.internal.SiteRule;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.Project;
import slopewright.model.SurveyBlock;

/** An obstacle without place or height cannot be compared with anything. A warning: the rule that compares it says that it was not. */
public final class ObstacleDataRule extends SiteRule {
    private static final double FINEST_M = 0.001;

    /** Made by the service loader. */
    public ObstacleDataRule() {
        super("DATA-11", Severity.WARNING);
    }

    @Override
    protected void check(Project project, OutcomeCollector outcomes) {
        for (Obstacle obstacle : project.getAerodrome().getObstacles()) {
            Missing missing = new Missing();
            int least = obstacle.getKind() == ObstacleKind.AREA ? 3 : obstacle.getKind() == ObstacleKind.LINE ? 2 : 1;
            missing.unless(obstacle.getPlaces().size() >= least, least == 1 ? "missing.place" : "missing.places", Words.count(least));
            boolean everywhere = !obstacle.getPlaces().isEmpty()
                    && obstacle.getPlaces().stream().allMatch(place -> place.getElevationM() != null);
            missing.unless(obstacle.getTopElevationM() != null || everywhere, "missing.top-elevation");
            accuracy(missing, obstacle.getHorizontalAccuracyM(), obstacle.getVerticalAccuracyM());
            missing.report(obstacle, outcomes, Message.of("DATA-11.complete"));
        }
        for (SurveyBlock block : project.getSurveyBlocks()) {
            Missing missing = new Missing();
            accuracy(missing, block.getHorizontalAccuracyM(), block.getVerticalAccuracyM());
            missing.report(block, outcomes, Message.of("DATA-11.complete-block"));
        }
    }

    /** No survey is exact, so an accuracy of nothing, or finer than a millimetre (own band), is none that is known. */
    private static void accuracy(Missing missing, Double horizontalM, Double verticalM) {
        missing.unless(horizontalM != null && Math.abs(horizontalM) >= FINEST_M, "missing.horizontal-accuracy");
        missing.unless(verticalM != null && Math.abs(verticalM) >= FINEST_M, "missing.vertical-accuracy");
    }
}
