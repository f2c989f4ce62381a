package slopewright.witness;

/** Side of the runway, seen in the landing direction. */
public enum Side {
    /** Left. */
    LEFT,
    /** Right. */
    RIGHT,
    /** Both. */
    BOTH
}
