package slopewright.evaluation.tolerance;

import java.util.Locale;
import java.util.Objects;

import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;

/**
 * One thing that may be wrong. The accuracy of a survey is counted on the safe side already, as every comparison with a surface counts it:
 * what is surveyed can only stand lower and farther out than it is counted, by up to twice its accuracy.
 *
 * @param kind      what
 * @param subject   name of the unit or obstacle
 * @param tolerance by how much, in the unit of the kind, zero or more
 */
public record ErrorSource(Kind kind, String subject, double tolerance) {

    /** What may be wrong. */
    public enum Kind {
        /** The angle of a unit. */
        ANGLE("'"),
        /** The level of a lens. */
        LEVEL("m"),
        /** The place of a unit along the runway. */
        PLACE("m"),
        /** The surveyed top of an obstacle. */
        OBSTACLE_TOP("m"),
        /** The surveyed place of an obstacle along the approach. */
        OBSTACLE_PLACE("m");

        private final String unit;

        Kind(String unit) {
            this.unit = unit;
        }

        /** Returns its unit: minutes of arc or metres. */
        public String unit() {
            return unit;
        }

        /** Returns the word used in output. */
        public String key() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /** Returns whether a survey may be wrong, not a setting out. */
        public boolean isSurvey() {
            return this == OBSTACLE_TOP || this == OBSTACLE_PLACE;
        }
    }

    /** Refuses missing parts. */
    public ErrorSource {
        Objects.requireNonNull(kind);
        Objects.requireNonNull(subject);
    }

    /** Returns the least error from what is counted, in the unit of the kind. */
    public double least() {
        return kind.isSurvey() ? -2 * tolerance : -tolerance;
    }

    /** Returns the greatest error from what is counted, in the unit of the kind. */
    public double greatest() {
        return kind.isSurvey() ? 0 : tolerance;
    }

    /** Returns what it is, for people. */
    public Message message() {
        return Message.of("tolerance.source." + kind.key(), Words.name(subject));
    }

    /** Returns the tolerance with its unit. */
    public Argument amount() {
        return kind == Kind.ANGLE ? Words.min(tolerance) : Words.m(tolerance);
    }
}
