package slopewright.evaluation.tolerance;

import java.math.BigDecimal;
import java.util.Objects;

/**
 * One thing that may be wrong.
 *
 * @param kind      what
 * @param subject   the unit or obstacle
 * @param tolerance by how much, to both sides, in the unit of the kind
 */
public record ErrorSource(Kind kind, String subject, double tolerance) {

    /** What may be wrong. */
    public enum Kind {
        /** The angle of a unit. */
        ANGLE("angle", "'"),
        /** The level of a lens. */
        LEVEL("level", "m"),
        /** The place of a unit along the runway. */
        PLACE("place", "m"),
        /** The surveyed top of an obstacle. */
        OBSTACLE_TOP("surveyed top", "m"),
        /** The surveyed place of an obstacle along the approach. */
        OBSTACLE_PLACE("surveyed place", "m");

        private final String label;
        private final String unit;

        Kind(String label, String unit) {
            this.label = label;
            this.unit = unit;
        }

        /** Returns what it is, for people. */
        public String label() {
            return label;
        }

        /** Returns its unit: minutes of arc or metres. */
        public String unit() {
            return unit;
        }
    }

    /** Refuses missing parts. */
    public ErrorSource {
        Objects.requireNonNull(kind);
        Objects.requireNonNull(subject);
    }

    /** Returns it in a few words. */
    public String label() {
        return kind.label() + " of " + subject;
    }

    /** Returns the tolerance with its unit, as {@code 3'} or {@code 0.05 m}. */
    public String amount() {
        String number = BigDecimal.valueOf(tolerance).stripTrailingZeros().toPlainString();
        return kind == Kind.ANGLE ? number + kind.unit() : number + " " + kind.unit();
    }
}
