package slopewright.witness;

/** How a light burns as seen. */
public enum State {
    /** Steady. */
    STEADY,
    /** Flashing at a fixed rate (heliport sector unit). */
    FLASHING,
    /** Pulsating (pulsating unit). */
    PULSATING,
    /** Not seen. */
    OFF
}
