package slopewright.witness;

/** Colour of a light as seen. */
public enum Colour {
    /** Red. */
    RED,
    /** White. */
    WHITE,
    /** Green. */
    GREEN,
    /** Amber. */
    AMBER,
    /** No light in this direction. */
    NONE
}
