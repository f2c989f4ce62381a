package slopewright.checks;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.portable.PortableSetUp;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.AeroplaneGroup;
import slopewright.model.Circuit;
import slopewright.model.EquipmentType;
import slopewright.model.Stage;
import slopewright.model.ValueConfirmation;
import slopewright.model.ValueOverride;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.ValueNames;
import slopewright.standards.Citation;

/**
 * Says what stands against setting a portable unit up, or against landing on any indicator: every rule that is not met or to be cleared
 * up, of the aid, its host and all that stands around, what the set-up itself names, and every value to be confirmed on which it rests.
 * What is not known to concern only something else counts.
 */
public final class SetUpGate {

    private final AidEvaluation aid;
    private final Set<String> usedKeys = new HashSet<>();

    private SetUpGate(AidEvaluation aid) {
        this.aid = aid;
    }

    /**
     * Returns what stands against a set-up; rules of the set-up ask even where the project is still a design.
     *
     * @param evaluation the evaluation of the project
     * @param aid        the evaluation of the aid in it
     * @param found      the set-up
     * @return a sentence each, what is not met first; empty where nothing stands against it
     */
    public static List<Message> reasons(ProjectEvaluation evaluation, AidEvaluation aid, PortableSetUp found) {
        return new SetUpGate(aid).reasons(evaluation, found.citations(), found.blockers(), found.restingToConfirm());
    }

    /**
     * Returns what stands against landing on an indicator that is not set up in the field; the same rules ask as before a set-up.
     *
     * @param evaluation the evaluation of the project
     * @param aid        the evaluation of the aid in it
     * @return a sentence each, what is not met first; empty where nothing stands against it
     */
    public static List<Message> reasons(ProjectEvaluation evaluation, AidEvaluation aid) {
        List<Citation> citations = aid.restsOn();
        return new SetUpGate(aid).reasons(evaluation, citations, List.of(), citations.stream().filter(Citation::toConfirm).toList());
    }

    /**
     * Returns what stands against a set-up that cannot even be worked out: the cause of that first.
     *
     * @param evaluation the evaluation of the project
     * @param aid        the evaluation of the aid in it
     * @param cause      why there is no set-up
     * @return a sentence each, never empty
     */
    public static List<Message> reasons(ProjectEvaluation evaluation, AidEvaluation aid, Message cause) {
        List<Message> reasons = new ArrayList<>(List.of(Message.of("set-up.none", cause)));
        reasons.addAll(new SetUpGate(aid).reasons(evaluation, List.of(), List.of(), List.of()));
        return reasons;
    }

    /**
     * Returns what of all outcomes concerns an aid: of its parts, its host, all that stands around and the values that it rests on.
     *
     * @param aid      the evaluation of the aid
     * @param outcomes outcomes of its project
     * @return those, in the same order
     */
    public static List<Outcome> concerning(AidEvaluation aid, List<Outcome> outcomes) {
        SetUpGate gate = new SetUpGate(aid);
        outcomes.stream().filter(gate::concerns).flatMap(outcome -> outcome.citations().stream()).map(Citation::key)
                .forEach(gate.usedKeys::add);
        return outcomes.stream().filter(gate::concerns).toList();
    }

    private List<Message> reasons(ProjectEvaluation evaluation, List<Citation> citations, List<Message> blockers, List<Citation> open) {
        Stage own = evaluation.project().getStage();
        Stage reached = own.compareTo(Stage.SET_UP) < 0 ? Stage.SET_UP : own;
        List<Outcome> outcomes = Checks.run(evaluation.only(aid.aid()), reached, rule -> true).outcomes();
        citations.stream().map(Citation::key).forEach(usedKeys::add);
        outcomes.stream().flatMap(outcome -> outcome.citations().stream()).map(Citation::key).forEach(usedKeys::add);
        List<Message> reasons = new ArrayList<>();
        add(outcomes, Verdict.NOT_MET, reasons);
        reasons.addAll(blockers);
        add(outcomes, Verdict.TO_CLEAR_UP, reasons);
        open.stream().filter(citation -> outcomes.stream().noneMatch(outcome -> outcome.verdict() == Verdict.TO_CLEAR_UP
                && concerns(outcome) && outcome.citations().contains(citation))).forEach(citation -> reasons.add(Message.of(
                        "set-up.to-confirm", Verdict.TO_CLEAR_UP.term(), ValueNames.of(citation.key()), citation.text())));
        return reasons;
    }

    private void add(List<Outcome> outcomes, Verdict verdict, List<Message> reasons) {
        outcomes.stream().filter(outcome -> outcome.verdict() == verdict && concerns(outcome)).map(SetUpGate::reason).forEach(reasons::add);
    }

    /** Says an outcome that stands against something: its verdict, rule, element and explanation. */
    public static Message reason(Outcome outcome) {
        return Message.of("set-up.reason", outcome.verdict().term(), Words.name(outcome.rule()), outcome.elementPath(),
                outcome.explanation());
    }

    private boolean concerns(Outcome outcome) {
        Optional<? extends EObject> element = outcome.elementId() == null ? Optional.empty()
                : Ids.find(aid.project(), outcome.elementId());
        return element.isEmpty() || concerns(element.get());
    }

    private boolean concerns(EObject element) {
        if (element instanceof EquipmentType type) {
            return type == aid.aid().getEquipment();
        }
        if (element instanceof Circuit circuit) {
            return circuit.getAids().contains(aid.aid());
        }
        if (element instanceof AeroplaneGroup group) {
            return aid.host().getRegularGroups().contains(group);
        }
        if (element instanceof ValueConfirmation confirmation) {
            return usedKeys.contains(confirmation.getValueKey());
        }
        if (element instanceof ValueOverride override) {
            return usedKeys.contains(override.getValueKey());
        }
        return PlaceStanding.isOrHolds(Projects.aid(element), Optional.of(aid.aid()))
                && PlaceStanding.isOrHolds(Projects.host(element), Optional.of(aid.host()))
                && PlaceStanding.isOrHolds(Projects.runway(element), Projects.runway(aid.host()))
                && PlaceStanding.isOrHolds(Projects.helipad(element), Projects.helipad(aid.host()));
    }
}
