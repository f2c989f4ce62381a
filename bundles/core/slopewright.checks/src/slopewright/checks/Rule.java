package slopewright.checks;

/**
 * One rule. Implementations are found as services, hold no state, and are named by an id that is never used again for another rule.
 */
public interface Rule {

    /** Returns the id: the prefix of its group and a number, such as {@code ROW-03}. */
    String id();

    /** Returns what it is called, a few words. */
    String title();

    /** Returns what it compares with what, one sentence for the catalogue. */
    String description();

    /** Returns the weight of a failure. */
    default Severity severity() {
        return Severity.FAIL;
    }

    /**
     * Checks a project.
     *
     * @param context  the project and what was worked out from it
     * @param findings receives the outcomes; a rule that applies to nothing adds none
     */
    void check(CheckContext context, Findings findings);
}
