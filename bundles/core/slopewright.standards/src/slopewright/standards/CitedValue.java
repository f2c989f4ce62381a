package slopewright.standards;

import java.util.Objects;

/**
 * A number of a rule set with where it comes from.
 *
 * @param value    the number as printed in its source
 * @param unit     its unit: {@code m}, {@code ft}, {@code deg}, {@code min}, {@code %}, {@code NM}, {@code s}, {@code Hz}, {@code V},
 *                 {@code cd}, {@code lx}, {@code times} or {@code code}
 * @param citation where it comes from
 */
public record CitedValue(double value, String unit, Citation citation) {

    /** Refuses missing parts and numbers that are not finite. */
    public CitedValue {
        Objects.requireNonNull(unit);
        Objects.requireNonNull(citation);
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("the value " + citation.key() + " is not finite");
        }
    }

    /** Returns the key by which a project confirms or overrides the value. */
    public String key() {
        return citation.key();
    }

    CitedValue withCitation(Citation other) {
        return new CitedValue(value, unit, other);
    }
}
