package slopewright.siting;

import java.util.Locale;

/** The side of the runway on which units stand, seen in the landing direction. */
public enum Side {
    /** Left only. */
    LEFT,
    /** Right only. */
    RIGHT,
    /** Both, the one the mirror of the other. */
    BOTH;

    /** Returns the word used in files and output. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
