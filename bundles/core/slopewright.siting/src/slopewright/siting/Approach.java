package slopewright.siting;

import java.util.Locale;

/** How a runway or helipad is approached, as far as dimensions of obstacle surfaces depend on it. */
public enum Approach {
    /** A visual approach. */
    VISUAL,
    /** An instrument approach, precision or not. */
    INSTRUMENT,
    /** Nobody said; what depends on it is not worked out. */
    NOT_STATED;

    /** Returns the word used in files and output. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
