package slopewright.siting;

import java.util.Locale;

/** What a pattern of lights tells the pilot, from too high to too low. */
public enum Meaning {
    /** Far above the slope. */
    WELL_ABOVE,
    /** Above the slope. */
    ABOVE,
    /** On or close to the slope. */
    ON_SLOPE,
    /** Below the slope. */
    BELOW,
    /** Far below the slope. */
    WELL_BELOW,
    /** No signal of the family: the eye is outside the beams, or the pattern is one that a healthy system does not show. */
    OUTSIDE;

    /** Returns the word used in files and output. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
