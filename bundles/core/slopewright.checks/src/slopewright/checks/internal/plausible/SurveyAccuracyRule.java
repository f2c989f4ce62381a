package slopewright.checks.internal.plausible;

import java.util.List;
import java.util.Objects;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.SiteRule;
import slopewright.messages.Argument;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleSurvey;
import slopewright.model.Project;
import slopewright.siting.ElementNames;

/**
 * An obstacle that names the source and the date of an obstacle survey was surveyed as accurately as that one, to two fifths (own band): a
 * survey has one class of accuracy. A survey is one of an approach, or of an obstacle that names it; where one is neither, the obstacles
 * that name no survey are said with it, for one of them may have named it. Severity fail: the accuracy is added
 * to the obstacle, so one that is too good hides a penetration.
 */
public final class SurveyAccuracyRule extends SiteRule {
    private static final double MOST_RATIO = 1.4;

    /** Made by the service loader. */
    public SurveyAccuracyRule() {
        super("DATA-61", Severity.FAIL);
    }

    @Override
    protected void check(Project project, OutcomeCollector outcomes) {
        Aerodrome aerodrome = project.getAerodrome();
        List<Argument> open = aerodrome.getObstacles().stream()
                .filter(obstacle -> aerodrome.getObstacleSurveys().stream().noneMatch(survey -> isOf(obstacle, survey)))
                .map(ElementNames::of).toList();
        for (ObstacleSurvey survey : aerodrome.getObstacleSurveys()) {
            boolean used = !survey.getHosts().isEmpty() || aerodrome.getObstacles().stream().anyMatch(obstacle -> isOf(obstacle, survey));
            outcomes.about(survey).met(used).saying(used ? "used" : open.isEmpty() ? "unused" : "unused-beside", ElementNames.of(survey),
                    Words.list(open)).advising("name").add();
        }
        for (Obstacle obstacle : aerodrome.getObstacles()) {
            List<ObstacleSurvey> surveys = aerodrome.getObstacleSurveys().stream().filter(survey -> isOf(obstacle, survey)).toList();
            if (surveys.size() == 1) {
                ObstacleSurvey survey = surveys.get(0);
                compare(obstacle, survey, "horizontal", obstacle.getHorizontalAccuracyM(), survey.getHorizontalAccuracyM(), outcomes);
                compare(obstacle, survey, "vertical", obstacle.getVerticalAccuracyM(), survey.getVerticalAccuracyM(), outcomes);
            }
        }
    }

    private static boolean isOf(Obstacle obstacle, ObstacleSurvey survey) {
        return obstacle.getSource() != null && obstacle.getDate() != null && Objects.equals(obstacle.getSource(), survey.getSource())
                && Objects.equals(obstacle.getDate(), survey.getDate());
    }

    private static void compare(Obstacle obstacle, ObstacleSurvey survey, String what, Double own, Double ofSurvey,
            OutcomeCollector outcomes) {
        if (own != null && ofSurvey != null && ofSurvey > 0) {
            outcomes.about(obstacle).measured(Measure.between(own / ofSurvey, 1 / MOST_RATIO, MOST_RATIO, ""))
                    .saying(what, ElementNames.of(obstacle), Words.m(own), ElementNames.of(survey), Words.m(ofSurvey))
                    .advising("correct").add();
        }
    }
}
