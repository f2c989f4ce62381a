package slopewright.evaluation.landing;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.evaluation.obstacles.GoverningSearch.Standing;
import slopewright.messages.Message;

/**
 * One slope in one landing direction.
 *
 * @param slopeDeg  the slope, decimal degrees
 * @param state     whether it is clear
 * @param line      against which line or surface the governing obstacle stands; empty where nothing lies within any, or there is none
 * @param governing the obstacle or survey point that stands highest against one of them, empty where nothing lies within
 * @param reason    why it is not clear; empty where it is
 */
public record LandingCell(double slopeDeg, State state, Optional<Line> line, Optional<Standing> governing, Optional<Message> reason) {

    /** Whether a slope is clear. */
    public enum State {
        /** Everything that was asked about was compared, was surveyed, and stands below. */
        CLEAR,
        /** Something stands through, or the sight runs into the ground. */
        BLOCKED,
        /** Nobody knows. It is never taken to be clear. */
        NOT_EVALUATED;

        /** Returns the word used in output. */
        public String key() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** What an obstacle is held against. */
    public enum Line {
        /** The obstacle surface of the rule set. */
        SURFACE,
        /** The lower edge of the red sector, the unit off by its whole allowance. */
        RED_EDGE,
        /** The published margin below the lowest on-slope signal, the unit off by its whole allowance. */
        MARGIN,
        /** The pad with its safety area, on which no unit may stand; how the FATO lies may not be known. */
        PAD;

        /** Returns the word used in output. */
        public String key() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /** Returns what it is, for people. */
        public Message message() {
            return Message.of("landing.line." + key());
        }
    }

    /** Refuses missing parts. */
    public LandingCell {
        Objects.requireNonNull(state);
        Objects.requireNonNull(line);
        Objects.requireNonNull(governing);
        Objects.requireNonNull(reason);
        if (reason.isPresent() == (state == State.CLEAR)) {
            throw new IllegalArgumentException("a slope is clear or there is a reason why not");
        }
    }

    /** Returns whether it would place a unit on the pad or in its safety area, or may do so. */
    public boolean isOnPad() {
        return line.filter(against -> against == Line.PAD).isPresent();
    }

    /** Returns whether it is clear. */
    public boolean isClear() {
        return state == State.CLEAR;
    }

    /**
     * Returns the height of the line or surface above the governing obstacle, the accuracy of its survey on the safe side, metres;
     * negative where it stands through, empty where nothing lies within.
     */
    public OptionalDouble marginM() {
        return governing.isPresent() ? OptionalDouble.of(governing.get().marginM()) : OptionalDouble.empty();
    }
}
