package slopewright.checks.internal.data;

import java.util.List;
import java.util.Map;

import slopewright.checks.Outcome;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.ReadBacks;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.ReadBack;
import slopewright.model.Stage;
import slopewright.siting.ElementNames;

/**
 * Everything that carries figures was read back by a second person, from the stage of setting up on: then foundations are poured and
 * lenses are set by these figures, while a design still changes every day and would be read in vain. Weighs as a failure, for nobody
 * would notice one wrong level; but what was not read back is to clear up and not at fault, for its entries may be right. Where nothing at
 * all was read back, one outcome says so instead of one an element; of a proposal it says nothing.
 */
public final class EverythingReadBackRule extends ProjectRule {
    /** Made by the service loader. */
    public EverythingReadBackRule() {
        super("REC-04", Severity.FAIL);
    }

    @Override
    public Stage stage() {
        return Stage.SET_UP;
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        if (evaluation.aids().stream().anyMatch(AidEvaluation::isProposal)) {
            return;
        }
        Project project = evaluation.project();
        Looked site = evaluation.keepOfSite(id(), () -> look(project, evaluation.siteElements()));
        Looked aids = look(project, evaluation.aidElements());
        int elements = site.elements() + aids.elements();
        int open = site.open().size() + aids.open().size();
        if (elements == 0 || project.getAerodrome() == null) {
            return;
        }
        if (open == 0) {
            outcomes.about(project).met(true).saying("whole", Words.count(elements)).add();
        } else if (open == elements) {
            outcomes.notEvaluated(project, List.of(Message.of("missing.read-backs")), Message.of("REC-04.none", Words.count(elements)));
        } else {
            outcomes.addAll(site.open());
            outcomes.addAll(aids.open());
        }
    }

    /** How many of some elements are read back at all, and what was said of those that were not. */
    private record Looked(int elements, List<Outcome> open) {
    }

    private Looked look(Project project, List<Identified> some) {
        OutcomeCollector outcomes = new OutcomeCollector(this);
        Map<String, ReadBack> known = ReadBacks.byElement(project);
        List<Identified> elements = ReadBacks.among(some);
        elements.stream().filter(element -> !known.containsKey(element.getId())).forEach(element -> outcomes.notEvaluated(element,
                List.of(Message.of("missing.read-back-of", ElementNames.of(element))),
                Message.of("REC-04.open", ElementNames.of(element), Words.name(element.getId()))));
        return new Looked(elements.size(), outcomes.outcomes());
    }
}
