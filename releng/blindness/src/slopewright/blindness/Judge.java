package slopewright.blindness;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

import slopewright.blindness.Corruption.Way;
import slopewright.checks.Outcome;
import slopewright.checks.Verdict;
import slopewright.messages.Argument;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachHost;
import slopewright.model.Helipad;
import slopewright.model.Identified;
import slopewright.model.LightUnit;
import slopewright.model.Project;
import slopewright.model.ReadBack;
import slopewright.model.Runway;
import slopewright.model.ValueConfirmation;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.ElementNames;
import slopewright.standards.Citation;

/**
 * Says of one corruption whether it was found, or why it need not be. A reason is only given where the results before and after prove it.
 */
final class Judge {
    /** What became of a corruption. */
    enum Reason {
        /** Something that was met is not met or to clear up, and names the element, what holds it or what it holds. */
        FOUND,
        /** The report lists the entry, or the element, as one on which no result rests, and no figure and no verdict moves. */
        FOR_THE_RECORD,
        /**
         * No figure, no verdict and nothing that is exported moves, although the entry is read: another corruption of the same entry is
         * found, or listed. So a second statement stands for what is taken out, another word says the same here, and two elements that
         * exchange all in which they differ are each other.
         */
        MEANS_THE_SAME,
        /**
         * A figure that stands listed or is handed over before and after moves, and everything is still met; for small changes, what is
         * taken out and other words alone.
         */
        LISTED_AND_MET,
        /** Only the read-back finds it: an entry is not as a second person read it, and what holds it is named. */
        FOUND_BY_READ_BACK,
        /** Something is open that does not name the element: the reader is warned, but not told where. */
        UNNAMED,
        /** None of these. */
        NONE
    }

    /** Says that a project has not come to the stage of a rule. */
    private static final String NOT_YET = "outcome.later-stage";

    private final Project project;
    private final TreeMap<String, String> figures;
    private final TreeMap<String, String> made;
    private final TreeMap<String, String> listed;
    private final Set<String> away;
    private final Set<String> kept;
    private final List<String> aids;
    private final List<String> exports;

    /** What was judged: what the rules say, and what with the read-backs. */
    record Judged(Reason byRules, Reason all) {
    }

    Judge(Project project, Results before) {
        this.project = project;
        figures = before.figures(outcome -> true);
        made = before.figures(Judge::isMade);
        listed = before.figures(Judge::isListed);
        away = before.away();
        kept = before.kept();
        aids = before.aids();
        exports = before.exports();
    }

    /** Carries a corruption out, judges it, and mends it. */
    Judged judge(Corruption corruption, List<Corruption> ofSameEntry) {
        Judged judged = judge(corruption);
        if (judged.byRules() == Reason.MEANS_THE_SAME && (!corruption.way().mayMean() || ofSameEntry.stream().map(this::judge)
                .map(Judged::byRules).noneMatch(another -> another == Reason.FOUND || another == Reason.LISTED_AND_MET))) {
            return new Judged(Reason.NONE, judged.all() == Reason.MEANS_THE_SAME ? Reason.NONE : judged.all());
        }
        return judged.byRules() == Reason.MEANS_THE_SAME ? new Judged(judged.byRules(), judged.byRules()) : judged;
    }

    private Judged judge(Corruption corruption) {
        Set<String> ids = new HashSet<>();
        Set<String> names = new HashSet<>();
        name(corruption, ids, names);
        corruption.carryOut().run();
        try {
            name(corruption, ids, names);
            return judge(corruption, ids, names);
        } finally {
            corruption.undo().run();
        }
    }

    private void name(Corruption corruption, Set<String> ids, Set<String> names) {
        name(corruption.elementId(), corruption.feature(), ids, names);
        if (!corruption.partnerId().equals(corruption.elementId())) {
            name(corruption.partnerId(), corruption.feature(), ids, names);
        }
    }

    /** What an outcome may be about, and by what it may be called, to name the element. The holders of all things name nothing. */
    private void name(String elementId, String featureName, Set<String> ids, Set<String> names) {
        Ids.find(project, elementId).ifPresent(element -> {
            ids.add(element.getId());
            if (!(element instanceof LightUnit)) {
                names.add(Projects.label(element));
            }
            names.addAll(Results.names(ElementNames.of(element)).stream().filter(name -> name.length() > 2).toList());
            for (EObject holder = element.eContainer(); holder != null && !(holder instanceof Aerodrome)
                    && !(holder instanceof Project); holder = holder.eContainer()) {
                ids.add(((Identified) holder).getId());
                if (!(holder instanceof LightUnit)) {
                    names.add(Projects.label((Identified) holder));
                }
                if (holder instanceof Runway runway) {
                    runway.getEnds().forEach(end -> ids.add(end.getId()));
                }
                if (holder instanceof ApproachHost || holder instanceof Helipad) {
                    Ids.elements((Identified) holder).forEach(part -> ids.add(part.getId()));
                }
            }
            EStructuralFeature feature = element.eClass().getEStructuralFeature(featureName.replaceFirst(".*\\.", ""));
            if (feature instanceof EReference reference && reference.isMany()) {
                ((List<?>) element.eGet(reference)).forEach(target -> ids.add(((Identified) target).getId()));
            }
            if (element instanceof ReadBack readBack) {
                ids.add(String.valueOf(readBack.getElementId()));
            }
            if (element instanceof ValueConfirmation confirmation) {
                names.add(String.valueOf(confirmation.getValueKey()));
            }
            if (element.eContainer() instanceof Aerodrome || element.eContainer() instanceof Project) {
                ids.add(((Identified) element.eContainer()).getId());
            }
            Ids.elements(element).forEach(part -> ids.add(part.getId()));
        });
    }

    private Judged judge(Corruption corruption, Set<String> ids, Set<String> names) {
        Results after;
        try {
            after = Results.of(project);
        } catch (IllegalArgumentException e) {
            return new Judged(Reason.FOUND, Reason.FOUND);
        }
        Reason byRules = byRules(corruption, after, ids, names);
        boolean open = byRules == Reason.NONE || byRules == Reason.UNNAMED || byRules == Reason.MEANS_THE_SAME;
        boolean read = open && after.notReadBack().stream()
                .anyMatch(outcome -> ids.contains(outcome.elementId()) || isNamed(outcome, names));
        return new Judged(byRules, read ? Reason.FOUND_BY_READ_BACK : byRules);
    }

    private Reason byRules(Corruption corruption, Results after, Set<String> ids, Set<String> names) {
        if (corruption.way() == Way.ELEMENT_REMOVED && !after.open().isEmpty()) {
            return Reason.FOUND;
        }
        if (after.open().stream().anyMatch(outcome -> ids.contains(outcome.elementId()) || isNamed(outcome, names))) {
            return Reason.FOUND;
        }
        if (!after.open().isEmpty()) {
            return Reason.UNNAMED;
        }
        TreeMap<String, String> now = after.figures(outcome -> true);
        boolean still = aids.equals(after.aids());
        if (still && made.equals(after.figures(Judge::isMade))
                && (kept.contains(corruption.entry()) && after.kept().contains(corruption.entry()) || isAway(corruption))) {
            return Reason.FOR_THE_RECORD;
        }
        boolean same = now.equals(figures) || corruption.way() == Way.SWAPPED && sorted(now).equals(sorted(figures));
        if (still && same && exports.equals(after.exports())) {
            return Reason.MEANS_THE_SAME;
        }
        boolean moved = !still || moves(after.figures(Judge::isListed)) || !exports.equals(after.exports());
        return corruption.way().mayMove() && moved ? Reason.LISTED_AND_MET : Reason.NONE;
    }

    /** Whether the report lists the element, what holds it, or what a list no longer names, as one on which no result rests. */
    private boolean isAway(Corruption corruption) {
        return away.contains(corruption.elementId()) || away.contains(corruption.partnerId())
                && corruption.way() == Way.REMOVED || Ids.find(project, corruption.elementId()).map(EObject::eContainer)
                        .filter(holder -> holder instanceof Identified part && away.contains(part.getId())).isPresent();
    }

    private static boolean isNamed(Outcome outcome, Set<String> names) {
        Set<String> said = new HashSet<>(Results.names(outcome.message()));
        for (Argument missing : outcome.missing()) {
            said.addAll(Results.names(missing));
        }
        outcome.citations().stream().filter(Citation::toConfirm).forEach(citation -> said.add(citation.key()));
        said.retainAll(names);
        String sentence = outcome.explanation().english();
        return !said.isEmpty() || names.stream().anyMatch(name -> name.contains(" ") && sentence.contains(name));
    }

    /** What a result is made of, or a verdict about it; not whether an entry can be true. */
    private static boolean isMade(Outcome outcome) {
        return !Results.isPlausibility(outcome);
    }

    /** What stands listed with its figure: met, or not at this stage. */
    private static boolean isListed(Outcome outcome) {
        return outcome.verdict() == Verdict.MET || outcome.message().key().equals(NOT_YET);
    }

    /** The figures without the elements they are about: two elements that exchange all in which they differ are each other. */
    private static List<String> sorted(Map<String, String> figures) {
        return figures.values().stream().sorted().toList();
    }

    private boolean moves(Map<String, String> after) {
        return after.entrySet().stream().anyMatch(entry -> listed.containsKey(entry.getKey())
                && !listed.get(entry.getKey()).equals(entry.getValue()));
    }
}
