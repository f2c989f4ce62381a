package slopewright.checks;

/** How a rule came out for one element. */
public enum Result {
    /** The rule is met. */
    PASS,
    /** The rule is broken. */
    FAIL,
    /** The rule has nothing to say about this element. */
    NOT_APPLICABLE,
    /** An input is missing, so nobody knows. */
    NOT_EVALUATED
}
