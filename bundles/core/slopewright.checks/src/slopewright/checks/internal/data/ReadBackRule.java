package slopewright.checks.internal.data;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.ReadBacks;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.ReadBack;
import slopewright.siting.ElementNames;

/**
 * What was read back stands as it was read: once, by somebody who is not the author of the project, of an element that is still there. It
 * asks at every stage, for who changes a sealed entry wants it read again, or made a slip. An entry that was changed since is to clear up
 * and not at fault: the new one may be the right one, and only the sheet that it comes from says so. Severity fail where a read-back is
 * none: nobody else looked, whatever the seal says. Of a proposal, which nobody wants to keep yet, it says nothing.
 */
public final class ReadBackRule extends ProjectRule {
    /** Made by the service loader. */
    public ReadBackRule() {
        super("REC-03", Severity.FAIL);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        if (evaluation.aids().stream().anyMatch(AidEvaluation::isProposal)) {
            return;
        }
        Project project = evaluation.project();
        Map<String, Identified> elements = ReadBacks.elements(project).stream()
                .collect(Collectors.toMap(Identified::getId, Function.identity(), (first, again) -> first));
        Set<String> seen = new HashSet<>();
        int sound = 0;
        for (ReadBack readBack : project.getReadBacks()) {
            Identified element = elements.get(readBack.getElementId());
            if (element == null) {
                outcomes.notEvaluated(readBack, List.of(Message.of("missing.read-back-of", name(readBack.getElementId()))),
                        Message.of("REC-03.gone", name(readBack.getElementId())));
                continue;
            }
            String fault = fault(project, readBack, seen.add(element.getId()));
            Argument[] words = {ElementNames.of(element), name(element.getId()), name(readBack.getPerson()), name(readBack.getDate())};
            if (!fault.isEmpty()) {
                outcomes.about(element).met(false).saying(fault, words).advising("again").add();
            } else if (!ReadBacks.holds(readBack, element)) {
                outcomes.notEvaluated(element, List.of(Message.of("missing.read-back-of", ElementNames.of(element))),
                        Message.of("REC-03.changed", words));
            } else {
                sound++;
            }
        }
        if (sound > 0) {
            outcomes.about(project).met(true).saying("same", Words.count(sound)).add();
        }
    }

    private static String fault(Project project, ReadBack readBack, boolean first) {
        String person = readBack.getPerson();
        if (person == null || person.isBlank() || SurveyDays.date(readBack.getDate()).isEmpty()) {
            return "unsigned";
        }
        boolean author = project.getAuthor() != null && project.getAuthor().strip().equalsIgnoreCase(person.strip());
        return author ? "author" : first ? "" : "twice";
    }

    private static Argument name(String text) {
        return text == null || text.isBlank() ? Words.term("unnamed") : Words.name(text);
    }
}
