package slopewright.checks;

/** How a rule came out for one element. */
public enum Result {
    /** The rule is met. */
    PASS,
    /** The rule is broken. */
    FAIL,
    /** The rule has nothing to say about this element. */
    NOT_APPLICABLE,
    /** The rule belongs to a later stage than that of the project, so nothing may be concluded from it yet. */
    NOT_AT_THIS_STAGE,
    /** An input is missing, so nobody knows. */
    NOT_EVALUATED
}
