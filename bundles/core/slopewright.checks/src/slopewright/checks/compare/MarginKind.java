package slopewright.checks.compare;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

import slopewright.checks.Outcome;
import slopewright.evaluation.AidEvaluation;

/** What a margin is kept to. */
public enum MarginKind {

    /** The obstacle surface: the margin of the aid as it stands. */
    OBSTACLE(Set.of()),
    /** The wheel clearance that is needed. */
    WHEELS(Set.of("WHEEL-01", "WHEEL-02", "WHEEL-03")),
    /** The eye height that is needed. */
    EYE(Set.of("EYE-01", "EYE-02", "EYE-03", "EYE-04"));

    private final Set<String> rules;

    MarginKind(Set<String> rules) {
        this.rules = rules;
    }

    /** Returns the least margin of an aid, metres: of its evaluation, or among what the rules of this kind measured in metres. */
    public OptionalDouble leastM(AidEvaluation aid, List<Outcome> outcomes) {
        return this == OBSTACLE ? aid.marginM() : outcomes.stream()
                .filter(outcome -> rules.contains(outcome.rule()) && outcome.unit().equals("m") && outcome.margin().isPresent())
                .mapToDouble(outcome -> outcome.margin().getAsDouble()).min();
    }
}
