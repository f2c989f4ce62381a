package slopewright.checks;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

import slopewright.checks.internal.DesignOutcomes;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.asbuilt.AsBuilt;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachAid;
import slopewright.siting.ElementNames;

/**
 * What the rules of the layout say of an indicator as it was measured, and not of its plan: the same rules over the same evaluation, of
 * units with the angles, places and levels that were found.
 */
public final class AsBuiltVerdicts {
    /** Rules that ask how exactly the units are set: for a measured angle {@code UNIT-05} asks that, with the tolerance of its stage. */
    private static final Set<String> SETTINGS = Set.of("ROW-07", "ROW-08", "ROW-10", "BAR-05", "BAR-08", "TF-05", "TF-06", "BOX-07",
            "BOX-10", "FIELD-04", "DATA-57");

    /** Rules that ask for an eye height with nothing to spare; what was built may fall short by as much as a distance is off. */
    private static final Set<String> EYE_HEIGHTS = Set.of("EYE-01", "WHEEL-01");

    private AsBuiltVerdicts() {
    }

    /** What decides whether the plan says the same. */
    private record Said(String rule, String element, Verdict verdict) {

        static Said of(Outcome outcome) {
            return new Said(outcome.rule(), outcome.elementId(), outcome.verdict());
        }
    }

    /**
     * Returns what is not met, or to be cleared up, of the indicator as it was measured while the plan does not say so.
     *
     * @param plan the evaluation of an aid as it is planned
     * @return the outcomes in the order of the rules; empty where nothing was measured, or the plan says all of it
     */
    public static List<Outcome> against(AidEvaluation plan) {
        return AsBuilt.measured(plan).map(measured -> {
            Set<Said> planned = new HashSet<>();
            outcomes(plan).forEach(outcome -> planned.add(Said.of(outcome)));
            return outcomes(measured).stream().filter(outcome -> outcome.weight().isPresent() && !planned.contains(Said.of(outcome))
                    && !isWithinEyeHeight(plan, outcome)).toList();
        }).orElse(List.of());
    }

    private static boolean isWithinEyeHeight(AidEvaluation plan, Outcome outcome) {
        return EYE_HEIGHTS.contains(outcome.rule()) && outcome.margin().isPresent() && plan.rules().find("siting.eye-height-tolerance-m")
                .filter(allowed -> outcome.margin().getAsDouble() >= -allowed.value()).isPresent();
    }

    /** Returns the same as sentences about the aid. */
    public static List<Message> messages(AidEvaluation plan) {
        return against(plan).stream().map(outcome -> message(plan.aid(), outcome)).toList();
    }

    /** Returns one of them as a sentence about the aid. */
    public static Message message(ApproachAid aid, Outcome found) {
        return Message.of(found.verdict() == Verdict.NOT_MET ? "UNIT-09.not-met" : "UNIT-09.open", ElementNames.of(aid),
                Words.name(found.rule()), found.message());
    }

    private static List<Outcome> outcomes(AidEvaluation aid) {
        return DesignOutcomes.of(aid, rule -> !SETTINGS.contains(rule.id()));
    }
}
