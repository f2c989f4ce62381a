package slopewright.checks.internal.data;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.ReadBacks;
import slopewright.evaluation.obstacles.SurveyDays;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Identified;
import slopewright.model.MagneticVariation;
import slopewright.model.Project;
import slopewright.model.ReadBack;
import slopewright.siting.ElementNames;
import slopewright.standards.SignedNames;

/**
 * What was read back stands as it was read: once, by somebody who is not the author of the project, of an element that is still there. It
 * asks at every stage, for who changes a sealed entry wants it read again, or made a slip. An entry that was changed since is to clear up
 * and not at fault: the new one may be the right one, and only the sheet that it comes from says so. Severity fail where a read-back is
 * none: nobody else looked, whatever the seal says. Of a proposal, which nobody wants to keep yet, it says nothing.
 * <p>
 * Who is a second person can be said only where the project names its author, and when a read-back was only where it is dated; without
 * them no read-back counts. Nothing here asks what day it is; a day is held against those in the project. A read-back before a date that
 * the element itself bears did not read the sheet of that date: not met. One before the first date of anything that the project holds is
 * hardly one of this project, and one after the date of the project is not part of what was issued that day, or the date is wrong: both are
 * to clear up, by reading again or by dating the project anew. The day of the magnetic variation is left out, for a chart gives it for a
 * day to come.
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
        Read site = evaluation.keepOfSite(id(), () -> read(evaluation.siteElements()));
        Read aids = read(evaluation.aidElements());
        List<Message> without = withoutMeasure(project);
        if (!without.isEmpty() && !project.getReadBacks().isEmpty()) {
            outcomes.notEvaluated(project, without, Message.of("REC-03.without"));
        }
        DateAttributes dates = new DateAttributes();
        Optional<LocalDate> earliest = Stream.of(site, aids).flatMap(some -> some.earliest().stream()).min(LocalDate::compareTo);
        Set<String> seen = new HashSet<>();
        int sound = 0;
        for (ReadBack readBack : project.getReadBacks()) {
            Identified element = site.elements().getOrDefault(readBack.getElementId(), aids.elements().get(readBack.getElementId()));
            if (element == null) {
                outcomes.notEvaluated(readBack, List.of(Message.of("missing.read-back-of", name(readBack.getElementId()))),
                        Message.of("REC-03.gone", name(readBack.getElementId())));
                continue;
            }
            String fault = fault(project, readBack, element, dates, seen.add(element.getId()));
            String doubt = doubt(project, readBack, element, earliest);
            Argument[] words = {ElementNames.of(element), name(element.getId()), name(readBack.getPerson()), name(readBack.getDate())};
            if (!fault.isEmpty()) {
                outcomes.about(element).met(false).saying(fault, words).advising("again").add();
            } else if (!doubt.isEmpty()) {
                outcomes.notEvaluated(element, List.of(Message.of("missing.read-back-of", ElementNames.of(element))),
                        Message.of("REC-03." + doubt, words));
            } else {
                sound++;
            }
        }
        if (sound > 0 && without.isEmpty()) {
            outcomes.about(project).met(true).saying("same", Words.count(sound)).add();
        }
    }

    /** Elements that are read back by their ids, and the first date that any of them bears. */
    private record Read(Map<String, Identified> elements, Optional<LocalDate> earliest) {
    }

    private static Read read(List<Identified> some) {
        Map<String, Identified> elements = ReadBacks.among(some).stream()
                .collect(Collectors.toMap(Identified::getId, Function.identity(), (first, again) -> first));
        DateAttributes dates = new DateAttributes();
        return new Read(elements, elements.values().stream().flatMap(element -> dates(element, dates)).min(LocalDate::compareTo));
    }

    private static List<Message> withoutMeasure(Project project) {
        List<Message> missing = new ArrayList<>();
        if (!SignedNames.isName(project.getAuthor())) {
            missing.add(Message.of("missing.project-author"));
        }
        if (SurveyDays.date(project.getDate()).isEmpty()) {
            missing.add(Message.of("missing.project-date"));
        }
        return missing;
    }

    private static String fault(Project project, ReadBack readBack, Identified element, DateAttributes dates, boolean first) {
        String person = readBack.getPerson();
        Optional<LocalDate> day = SurveyDays.date(readBack.getDate());
        if (!SignedNames.isName(person) || day.isEmpty()) {
            return "unsigned";
        }
        if (ReadBacks.isAuthor(project, person)) {
            return "author";
        }
        return dates(element, dates).anyMatch(day.get()::isBefore) ? "before" : first ? "" : "twice";
    }

    private static String doubt(Project project, ReadBack readBack, Identified element, Optional<LocalDate> earliest) {
        if (!ReadBacks.holds(readBack, element)) {
            return "changed";
        }
        LocalDate day = SurveyDays.date(readBack.getDate()).orElse(LocalDate.MIN);
        if (SurveyDays.date(project.getDate()).filter(day::isAfter).isPresent()) {
            return "late";
        }
        return earliest.filter(day::isBefore).isPresent() ? "early" : "";
    }

    /** The dates of what is read back as one with an element. */
    private static Stream<LocalDate> dates(EObject element, DateAttributes known) {
        Stream<LocalDate> own = element instanceof MagneticVariation ? Stream.empty() : known.of(element.eClass()).stream()
                .map(date -> SurveyDays.date((String) element.eGet(date))).flatMap(Optional::stream);
        return Stream.concat(own, element.eContents().stream().filter(part -> !(part instanceof Identified held)
                || ReadBacks.holder(held).filter(holder -> holder == held).isEmpty()).flatMap(part -> dates(part, known)));
    }

    private static Argument name(String text) {
        return text == null || text.isBlank() ? Words.term("unnamed") : Words.name(text);
    }
}
