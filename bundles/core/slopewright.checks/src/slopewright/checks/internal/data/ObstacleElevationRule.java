package slopewright.checks.internal.data;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.SiteRule;
import slopewright.messages.Words;
import slopewright.model.Obstacle;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.siting.ElementNames;

/**
 * The top of an obstacle is that of its highest place, to the millimetre that the model keeps, where both are entered. Severity fail: one
 * of the two is wrong, and the higher one is compared.
 */
public final class ObstacleElevationRule extends SiteRule {
    /** Made by the service loader. */
    public ObstacleElevationRule() {
        super("DATA-20", Severity.FAIL);
    }

    @Override
    protected void check(Project project, OutcomeCollector outcomes) {
        List<Obstacle> obstacles = project.getAerodrome().getObstacles();
        int compared = 0;
        int contradicting = 0;
        for (Obstacle obstacle : obstacles) {
            OptionalDouble highest = highestM(obstacle);
            if (obstacle.getTopElevationM() == null || highest.isEmpty()) {
                continue;
            }
            compared++;
            Measure measure = Measure.within(obstacle.getTopElevationM(), highest.getAsDouble(), 0, "m");
            if (!measure.isMet()) {
                contradicting++;
                outcomes.about(obstacle).measured(measure).saying("differs", ElementNames.of(obstacle),
                        Words.mm(obstacle.getTopElevationM()), Words.mm(highest.getAsDouble())).advising("correct").add();
            }
        }
        if (compared > 0 && contradicting == 0) {
            outcomes.about(project.getAerodrome()).met(true).saying("agree", Words.count(compared)).add();
        }
    }

    private static OptionalDouble highestM(Obstacle obstacle) {
        return obstacle.getPlaces().stream().map(Place::getElevationM).filter(Objects::nonNull).mapToDouble(Double::doubleValue).max();
    }
}
