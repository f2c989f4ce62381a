package slopewright.standards;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A word of a rule set where it says which of several things holds, rather than how much of one. */
public enum RuleChoice {
    /** Heights count from the elevation of the threshold, or of the TLOF. */
    THRESHOLD(Kind.SURFACE_DATUM),
    /** Heights count from the level of the lenses at the reference point. */
    REFERENCE_POINT(Kind.SURFACE_DATUM),
    /** On the left, unless that is impracticable. */
    LEFT(Kind.SIDE),
    /** All lenses of a side stand in one horizontal plane. */
    ONE_PLANE(Kind.LEVELS),
    /** The rate of pulses rises with the deviation. */
    RATE(Kind.PULSES),
    /** Pulses of a constant rate shorten with the deviation. */
    LENGTH(Kind.PULSES),
    /** From top to bottom flashing green, green, red and flashing red. */
    FLASHING_GREEN_ON_TOP(Kind.SECTORS),
    /** It is so. */
    YES(Kind.FLAG),
    /** It is not so. */
    NO(Kind.FLAG);

    /** What is chosen. */
    public enum Kind {
        /** Height of the start of an obstacle surface. */
        SURFACE_DATUM("obstacle.surface-datum"),
        /** Side of the runway. */
        SIDE(".side"),
        /** What the levels of a row are compared with. */
        LEVELS(".level-basis"),
        /** How pulses tell a deviation. */
        PULSES(".pulse-form"),
        /** Order of the sectors of a unit. */
        SECTORS(".sector-order"),
        /** Whether something holds. */
        FLAG(".frangible", "obstacle.beam-narrowing", ".surface-length-from-threshold");

        private final List<String> keys;

        Kind(String... keys) {
            this.keys = List.of(keys);
        }

        /** Returns the kind of the choice with a key of a rule set, empty where it is none. */
        public static Optional<Kind> of(String key) {
            return Arrays.stream(values()).filter(kind -> kind.keys.stream().anyMatch(key::endsWith)).findFirst();
        }

        /** Returns the words that it allows, in their order. */
        public List<RuleChoice> words() {
            return Arrays.stream(RuleChoice.values()).filter(word -> word.kind == this).toList();
        }

        /** Returns what stands in the column of units: {@code flag} or {@code choice}. */
        public String unit() {
            return this == FLAG ? "flag" : "choice";
        }
    }

    private final Kind kind;

    RuleChoice(Kind kind) {
        this.kind = kind;
    }

    /** Returns what it chooses. */
    public Kind kind() {
        return kind;
    }

    /** Returns the word in files. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Returns its place among the words of its kind, from 1: the number by which a project confirms it. */
    public int place() {
        return kind.words().indexOf(this) + 1;
    }
}
