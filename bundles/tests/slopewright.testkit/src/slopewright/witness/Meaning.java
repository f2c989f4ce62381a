package slopewright.witness;

/** What a pattern tells the pilot. */
public enum Meaning {
    /** Well above the slope. */
    WELL_ABOVE,
    /** Above the slope. */
    ABOVE,
    /** On the slope. */
    ON_SLOPE,
    /** Below the slope. */
    BELOW,
    /** Well below the slope. */
    WELL_BELOW,
    /** No light, or a pattern a healthy indicator cannot show. */
    OUTSIDE
}
