package slopewright.checks.internal.obstacle;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.Missing;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ObstacleSurvey;
import slopewright.siting.ElementNames;

/**
 * Every obstacle survey says when and by whom it was made, how far it reaches and how accurate it is, whether it names a place or is
 * only the source of obstacles; and no survey is exact. A warning, as whatever is to be cleared up.
 */
public final class SurveyDataRule extends ProjectRule {
    /** Made by the service loader. */
    public SurveyDataRule() {
        super("OBS-09", Severity.WARNING);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        if (evaluation.project().getAerodrome() != null) {
            evaluation.project().getAerodrome().getObstacleSurveys().forEach(survey -> check(survey, outcomes));
        }
    }

    private static void check(ObstacleSurvey survey, OutcomeCollector outcomes) {
        if (isExact(survey.getHorizontalAccuracyM()) || isExact(survey.getVerticalAccuracyM())) {
            outcomes.about(survey).met(false).saying("exact", ElementNames.of(survey)).advising("enter").add();
            return;
        }
        Missing missing = SurveyCover.lacking(survey);
        missing.report(survey, outcomes, Message.of("OBS-09.whole", ElementNames.of(survey), Words.name(String.valueOf(survey.getDate()))));
    }

    private static boolean isExact(Double accuracyM) {
        return accuracyM != null && !(accuracyM > 0);
    }
}
