package slopewright.checks.internal;

import java.util.List;

/** Ends a rule for one element: an input is missing, or the rule has nothing to say. */
final class Stop extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<String> missing;

    private Stop(String reason, List<String> missing) {
        super(reason);
        this.missing = missing;
    }

    /** Says that an input is missing. */
    static Stop missing(String what) {
        return new Stop("Not evaluated: the " + what + " is missing. Enter it.", List.of(what));
    }

    /** Says that an input is missing, in words of its own. */
    static Stop missing(String what, String explanation) {
        return new Stop(explanation, List.of(what));
    }

    /** Says that something could not be worked out; the reason names what is missing. */
    static Stop unsolved(String reason) {
        return new Stop("Not evaluated: " + reason + ".", List.of(reason));
    }

    /** Says that the rule has nothing to say. */
    static Stop notApplicable(String reason) {
        return new Stop(reason, List.of());
    }

    /** Returns what is missing; empty where the rule has nothing to say. */
    List<String> missing() {
        return missing == null ? List.of() : missing;
    }
}
