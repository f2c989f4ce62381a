package slopewright.siting;

import java.util.Locale;

/** Colour of a light as a pilot names it. */
public enum Colour {
    /** White. */
    WHITE,
    /** Red. */
    RED,
    /** Green. */
    GREEN,
    /** Amber. */
    AMBER,
    /** No light. */
    NONE;

    /** Returns the word used in files and output. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
