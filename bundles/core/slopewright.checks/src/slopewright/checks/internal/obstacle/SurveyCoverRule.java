package slopewright.checks.internal.obstacle;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Missing;
import slopewright.checks.internal.Stop;
import slopewright.evaluation.obstacles.SurveyDays;
import slopewright.evaluation.obstacles.SurveyReach;
import slopewright.geometry.ProtectionSurface;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ObstacleSurvey;
import slopewright.siting.ElementNames;

/**
 * A dated survey of stated accuracy, made no more than ten years before the project (own band), reaches over everything in which an
 * obstacle would decide. A warning, as whatever is to be cleared up: beyond the survey nobody knows what stands there, and long after it
 * nobody knows what was built and what grew.
 */
public final class SurveyCoverRule extends AidRule {
    /** Made by the service loader. */
    public SurveyCoverRule() {
        super("OBS-07", Severity.WARNING);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        List<ProtectionSurface> areas = SurveyCover.areas(facts);
        if (areas.isEmpty()) {
            throw Stop.notApplicable(Message.of("OBS-07.no-area"));
        }
        Argument host = ElementNames.of(facts.host());
        List<ObstacleSurvey> surveys = SurveyCover.of(facts).surveys();
        if (surveys.isEmpty()) {
            throw Stop.missing(Message.of("missing.survey-of", host), Message.of("OBS-07.none", host));
        }
        Map<ObstacleSurvey, Missing> lacking = surveys.stream().collect(Collectors.toMap(survey -> survey, SurveyCover::lacking));
        List<ObstacleSurvey> whole = surveys.stream().filter(survey -> lacking.get(survey).names().isEmpty()).toList();
        if (whole.isEmpty()) {
            List<Message> names = new ArrayList<>();
            surveys.forEach(survey -> names.addAll(lacking.get(survey).names()));
            outcomes.notEvaluated(facts.aid(), names, Message.of("outcome.missing-inputs", Words.list(names)));
            return;
        }
        List<ObstacleSurvey> late = whole.stream()
                .filter(survey -> !SurveyDays.isLongAgo(survey.getDate(), facts.evaluation().project())).toList();
        if (late.isEmpty()) {
            throw Stop.missing(Message.of("missing.late-survey", host), Message.of("OBS-07.long-ago", ElementNames.of(whole.get(0)),
                    Words.name(whole.get(0).getDate()), Words.count(SurveyDays.YEARS)));
        }
        ObstacleSurvey best = late.stream().max(Comparator.comparingDouble(survey -> worst(survey, areas).slack())).orElseThrow();
        double reach = areas.stream().mapToDouble(area -> SurveyReach.neededReachM(best, area)).max().orElseThrow();
        double halfWidth = areas.stream().mapToDouble(SurveyReach::neededHalfWidthM).max().orElseThrow();
        outcomes.about(facts.aid()).measured(worst(best, areas))
                .saying("compared", ElementNames.of(best), Words.name(best.getDate()), Words.wholeM(best.getReachM()),
                        Words.wholeM(SurveyReach.halfWidthM(best).orElseThrow()), Words.wholeM(reach), Words.wholeM(halfWidth))
                .advising("survey").add();
    }

    private static Measure worst(ObstacleSurvey survey, List<ProtectionSurface> areas) {
        return areas.stream().map(area -> SurveyCover.reach(survey, area).orElseThrow()).reduce(Measure::worse).orElseThrow();
    }
}
