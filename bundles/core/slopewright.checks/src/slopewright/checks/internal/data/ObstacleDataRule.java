package slopewright.checks.internal.data;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Rule;
import slopewright.checks.Severity;
import slopewright.checks.internal.Missing;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;

/** An obstacle without place or height can not be compared with anything. */
public final class ObstacleDataRule implements Rule {

    @Override
    public String id() {
        return "DATA-11";
    }

    @Override
    public Severity severity() {
        return Severity.WARNING;
    }

    @Override
    public void check(ProjectEvaluation context, OutcomeCollector findings) {
        if (context.project().getAerodrome() == null) {
            return;
        }
        for (Obstacle obstacle : context.project().getAerodrome().getObstacles()) {
            Missing missing = new Missing();
            int least = obstacle.getKind() == ObstacleKind.AREA ? 3 : obstacle.getKind() == ObstacleKind.LINE ? 2 : 1;
            missing.unless(obstacle.getPlaces().size() >= least, least == 1 ? "place" : least + " places");
            boolean everywhere = !obstacle.getPlaces().isEmpty()
                    && obstacle.getPlaces().stream().allMatch(place -> place.getElevationM() != null);
            missing.unless(obstacle.getTopElevationM() != null || everywhere, "top elevation");
            missing.unless(obstacle.getHorizontalAccuracyM() != null, "horizontal accuracy");
            missing.unless(obstacle.getVerticalAccuracyM() != null, "vertical accuracy");
            Missing.report(findings, obstacle, missing.names(), "Place, top elevation and accuracy are known.");
        }
    }
}
