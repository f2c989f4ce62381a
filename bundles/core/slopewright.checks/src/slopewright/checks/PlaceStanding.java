package slopewright.checks;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.AeroplaneGroup;
import slopewright.model.ApproachHost;
import slopewright.model.Circuit;
import slopewright.model.EquipmentType;
import slopewright.model.ReviewNote;
import slopewright.model.Stage;
import slopewright.model.ValueConfirmation;
import slopewright.model.ValueOverride;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;

/**
 * What the rules say of a runway end or an approach to a helipad before anything stands there: of itself, of what it lies in, of the
 * aeroplanes that land there and of all that stands around, but of no indicator, its equipment and its circuit. A layout that is solved
 * there rests on it; where it contradicts itself nobody knows where the layout stands.
 *
 * @param outcomes what the rules of a design say of the place
 */
public record PlaceStanding(List<Outcome> outcomes) {

    /** Copies the list. */
    public PlaceStanding {
        outcomes = List.copyOf(outcomes);
    }

    /**
     * Checks a project as it stands: a copy in which something is tried lacks what is not asked there. What stands around is asked about
     * with the indicators of the place, whose surface it stands in or not, and with those of no other one.
     *
     * @param evaluation the project
     * @param place      a runway end or approach direction of it, or of a copy of it
     * @throws IllegalArgumentException where the project has no such place
     */
    public static PlaceStanding of(ProjectEvaluation evaluation, ApproachHost place) {
        return of(evaluation, place, aid -> aid.host().getId().equals(place.getId()));
    }

    /**
     * Checks the place as if no indicator stood anywhere: what stands in the surface of one is not held against another that is tried there
     * and has a surface of its own.
     *
     * @param evaluation the project, as above
     * @param place      a runway end or approach direction of it, or of a copy of it
     * @throws IllegalArgumentException where the project has no such place
     */
    public static PlaceStanding bare(ProjectEvaluation evaluation, ApproachHost place) {
        return of(evaluation, place, aid -> false);
    }

    private static PlaceStanding of(ProjectEvaluation evaluation, ApproachHost place, Predicate<AidEvaluation> with) {
        Map<String, EObject> elements = new HashMap<>();
        Ids.elements(evaluation.project()).forEach(element -> elements.put(element.getId(), element));
        if (!(elements.get(place.getId()) instanceof ApproachHost host)) {
            throw new IllegalArgumentException("the project has no place " + place.getId());
        }
        return new PlaceStanding(Checks.run(evaluation, evaluation.project().getStage(), rule -> rule.stage() == Stage.DESIGN, with)
                .outcomes().stream()
                .filter(outcome -> outcome.elementId() != null && concerns(elements.get(outcome.elementId()), host)).toList());
    }

    private static boolean concerns(EObject element, ApproachHost host) {
        boolean other = element instanceof EquipmentType || element instanceof Circuit || element instanceof ValueConfirmation
                || element instanceof ValueOverride || element instanceof ReviewNote || Projects.aid(element).isPresent()
                || element instanceof AeroplaneGroup group && !host.getRegularGroups().contains(group);
        return !other && isOrHolds(Projects.host(element), Optional.of(host))
                && isOrHolds(Projects.runway(element), Projects.runway(host))
                && isOrHolds(Projects.helipad(element), Projects.helipad(host));
    }

    /** Returns whether an element lies in no such part at all, or in that of the place. */
    static <T> boolean isOrHolds(Optional<T> part, Optional<T> own) {
        return part.isEmpty() || part.equals(own);
    }

    /** Returns whether an outcome is not met, notes aside. */
    public static boolean isBroken(Outcome outcome) {
        return outcome.verdict() == Verdict.NOT_MET && outcome.severity() != Severity.NOTE;
    }

    /** Returns what is not met of the place, notes aside. */
    public List<Outcome> broken() {
        return outcomes.stream().filter(PlaceStanding::isBroken).toList();
    }

    /** Returns whether nothing of the place is not met or to clear up, notes aside. */
    public boolean isClear() {
        return broken().isEmpty() && open().isEmpty();
    }

    /** Returns what speaks against the place: each that is not met in its own words, then what is to clear up in one sentence. */
    public List<Message> reasons() {
        List<Outcome> open = open();
        return Stream.concat(broken().stream().map(SetUpGate::reason), open.isEmpty() ? Stream.empty()
                : Stream.of(Message.of("comparison.place-open", Words.count(open.size()), ids(open)))).toList();
    }

    /** Returns the ids of the rules that are not met or to clear up, in one sentence. */
    public Message rules() {
        List<Outcome> open = open();
        return Message.of("comparison.place-rules", Words.count(broken().size()), ids(broken()), Words.count(open.size()), ids(open));
    }

    private static Argument ids(List<Outcome> outcomes) {
        return Words.list(outcomes.stream().map(Outcome::rule).distinct().map(Words::name).toList());
    }

    /** Returns the verdict of the place with its counts. */
    public Standing standing() {
        return Standing.counted(outcomes);
    }

    private List<Outcome> open() {
        return outcomes.stream().filter(outcome -> outcome.verdict() == Verdict.TO_CLEAR_UP).toList();
    }
}
