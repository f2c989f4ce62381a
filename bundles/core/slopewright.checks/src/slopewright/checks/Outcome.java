package slopewright.checks;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.standards.Citation;

/**
 * What one rule says about one element.
 *
 * @param rule        id of the rule
 * @param title       what the rule is called
 * @param elementId   id of the element
 * @param elementPath the element for people
 * @param verdict     how it came out
 * @param severity    weight of a failure of this rule
 * @param value       the measured value
 * @param limit       the limit that decides
 * @param margin      how far the value is on the good side of the limit; negative on the bad side
 * @param unit        unit of value, limit and margin; empty where there are none
 * @param missing     inputs that are missing, for people
 * @param citation    where the limit comes from
 * @param toConfirm   whether a value that nobody confirmed decided it
 * @param explanation one sentence: what was compared, and what to do where it failed
 */
public record Outcome(String rule, String title, String elementId, String elementPath, Verdict verdict, Severity severity,
        OptionalDouble value, OptionalDouble limit, OptionalDouble margin, String unit, List<String> missing, Optional<Citation> citation,
        boolean toConfirm, String explanation) {

    /** Refuses missing parts. */
    public Outcome {
        Objects.requireNonNull(rule);
        Objects.requireNonNull(verdict);
        Objects.requireNonNull(severity);
        Objects.requireNonNull(citation);
        Objects.requireNonNull(explanation);
        missing = List.copyOf(missing);
    }

    /**
     * Returns how much the outcome weighs as a finding.
     *
     * @return empty where it is none; a warning where something is missing or to be confirmed
     */
    public Optional<Severity> weight() {
        return switch (verdict) {
            case FAIL -> Optional.of(toConfirm && severity == Severity.NOTE ? Severity.WARNING : severity);
            case NOT_EVALUATED -> Optional.of(Severity.WARNING);
            case PASS -> toConfirm ? Optional.of(Severity.WARNING) : Optional.empty();
            case NOT_APPLICABLE -> Optional.empty();
        };
    }
}
