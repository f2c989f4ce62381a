package slopewright.checks.internal.data;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;

import slopewright.checks.Outcome;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.obstacles.SurveyDays;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.BackgroundImage;
import slopewright.model.GroundLevel;
import slopewright.model.Identified;
import slopewright.model.Inspection;
import slopewright.model.MeasuredUnit;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleSurvey;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.SurveyBlock;
import slopewright.siting.ElementNames;

/**
 * Every date is one (year, month, day), and what a project rests on is no younger than the project. Notes and confirmations may come after
 * it. A measurement or an inspection that is younger is not part of what was issued that day, and one from before the ground was surveyed
 * that the units stand on hardly saw what was laid out on it; or the date is wrong. Both are to clear up. A warning: the numbers beside a
 * wrong date may be right.
 */
public final class DatesRule extends ProjectRule {
    /** Made by the service loader. */
    public DatesRule() {
        super("REC-02", Severity.WARNING);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        Project project = evaluation.project();
        Looked site = evaluation.keepOfSite(id(), () -> look(project, evaluation.siteElements(), Optional.empty()));
        Looked aids = look(project, evaluation.aidElements(), site.ground());
        outcomes.addAll(site.wrong());
        outcomes.addAll(aids.wrong());
        if (site.good() + aids.good() > 0) {
            outcomes.about(project).met(true).saying("dates", Words.count(site.good() + aids.good())).add();
        }
    }

    /** How many dates of some elements are good, what was said of the others, and the first day on which ground was surveyed. */
    private record Looked(int good, List<Outcome> wrong, Optional<LocalDate> ground) {
    }

    private Looked look(Project project, List<Identified> elements, Optional<LocalDate> ground) {
        OutcomeCollector outcomes = new OutcomeCollector(this);
        Optional<LocalDate> issued = SurveyDays.date(project.getDate());
        DateAttributes dates = new DateAttributes();
        int good = 0;
        for (Identified element : elements) {
            for (EAttribute attribute : dates.of(element.eClass())) {
                String text = (String) element.eGet(attribute);
                if (text == null || text.isBlank()) {
                    continue;
                }
                Optional<LocalDate> date = SurveyDays.date(text);
                String fault = date.isEmpty() ? "no-date" : isEvidence(element) && isAfter(date, issued) ? "younger" : "";
                String doubt = !isMeasurement(element) ? "" : isAfter(date, issued) ? "late" : isAfter(ground, date) ? "early" : "";
                Argument[] words = {Words.name(text), day("late".equals(doubt) || fault.length() > 0 ? issued : ground),
                    ElementNames.way(element)};
                if (!fault.isEmpty()) {
                    outcomes.about(element).met(false).saying(fault, words).advising("correct").add();
                } else if (!doubt.isEmpty()) {
                    outcomes.notEvaluated(element, List.of(Message.of("missing.day-of", ElementNames.way(element))),
                            Message.of("REC-02." + doubt, words));
                } else {
                    good++;
                }
            }
        }
        return new Looked(good, outcomes.outcomes(), elements.stream().filter(DatesRule::isGround)
                .flatMap(element -> dates.of(element.eClass()).stream().map(date -> SurveyDays.date((String) element.eGet(date))))
                .flatMap(Optional::stream).min(LocalDate::compareTo));
    }

    private static boolean isAfter(Optional<LocalDate> day, Optional<LocalDate> other) {
        return day.isPresent() && other.filter(day.get()::isAfter).isPresent();
    }

    private static Argument day(Optional<LocalDate> day) {
        return Words.name(day.map(LocalDate::toString).orElse(""));
    }

    private static boolean isGround(Identified element) {
        return element instanceof GroundLevel || element instanceof RunwayEnd;
    }

    private static boolean isMeasurement(Identified element) {
        return element instanceof MeasuredUnit || element instanceof Inspection;
    }

    private static boolean isEvidence(Identified element) {
        return element instanceof Obstacle || element instanceof ObstacleSurvey || element instanceof SurveyBlock
                || element instanceof BackgroundImage || isGround(element);
    }
}
