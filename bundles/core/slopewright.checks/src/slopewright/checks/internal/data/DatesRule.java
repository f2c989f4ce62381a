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
        Looked site = evaluation.keepOfSite(id(), () -> look(project, evaluation.siteElements()));
        Looked aids = look(project, evaluation.aidElements());
        outcomes.addAll(site.wrong());
        outcomes.addAll(aids.wrong());
        if (site.good() + aids.good() > 0) {
            outcomes.about(project).met(true).saying("dates", Words.count(site.good() + aids.good())).add();
        }
    }

    /** How many dates of some elements are good, and what was said of the others. */
    private record Looked(int good, List<Outcome> wrong) {
    }

    private Looked look(Project project, List<Identified> elements) {
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
                boolean tooYoung = isEvidence(element) && date.isPresent() && issued.isPresent() && date.get().isAfter(issued.get());
                if (date.isPresent() && !tooYoung) {
                    good++;
                    continue;
                }
                outcomes.about(element).met(false).saying(date.isEmpty() ? "no-date" : "younger", Words.name(text),
                        Words.name(issued.map(LocalDate::toString).orElse(""))).advising("correct").add();
            }
        }
        return new Looked(good, outcomes.outcomes());
    }

    private static boolean isEvidence(Identified element) {
        return element instanceof Obstacle || element instanceof ObstacleSurvey || element instanceof SurveyBlock
                || element instanceof GroundLevel || element instanceof BackgroundImage;
    }
}
