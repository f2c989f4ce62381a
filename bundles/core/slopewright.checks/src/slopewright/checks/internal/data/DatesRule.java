package slopewright.checks.internal.data;

import java.time.LocalDate;
import java.util.Optional;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Words;
import slopewright.model.BackgroundImage;
import slopewright.model.GroundLevel;
import slopewright.model.Identified;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleSurvey;
import slopewright.model.Project;
import slopewright.model.SurveyBlock;

/**
 * Every date is one (year, month, day), and what a project rests on is no younger than the project. Measurements, inspections, notes and
 * confirmations may come after it. A warning: the numbers beside a wrong date may be right.
 */
public final class DatesRule extends ProjectRule {
    /** Made by the service loader. */
    public DatesRule() {
        super("REC-02", Severity.WARNING);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        Project project = evaluation.project();
        Optional<LocalDate> issued = SurveyDays.date(project.getDate());
        long[] good = {0};
        DateAttributes dates = new DateAttributes();
        evaluation.elements().forEach(element -> dates.of(element.eClass())
                .forEach(attribute -> {
                    String text = (String) element.eGet(attribute);
                    if (text == null || text.isBlank()) {
                        return;
                    }
                    Optional<LocalDate> date = SurveyDays.date(text);
                    boolean tooYoung = isEvidence(element) && date.isPresent() && issued.isPresent() && date.get().isAfter(issued.get());
                    if (date.isPresent() && !tooYoung) {
                        good[0]++;
                        return;
                    }
                    outcomes.about(element).met(false).saying(date.isEmpty() ? "no-date" : "younger", Words.name(text),
                            Words.name(issued.map(LocalDate::toString).orElse(""))).advising("correct").add();
                }));
        if (good[0] > 0) {
            outcomes.about(project).met(true).saying("dates", Words.count(good[0])).add();
        }
    }

    private static boolean isEvidence(Identified element) {
        return element instanceof Obstacle || element instanceof ObstacleSurvey || element instanceof SurveyBlock
                || element instanceof GroundLevel || element instanceof BackgroundImage;
    }
}
