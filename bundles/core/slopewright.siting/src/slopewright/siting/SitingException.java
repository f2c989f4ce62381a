package slopewright.siting;

import java.util.List;

/** A siting that can not be solved: the message says what, where and what to do. */
public final class SitingException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<Input> missing;

    /** Makes an exception for a reason. */
    public SitingException(String reason) {
        this(reason, List.of());
    }

    private SitingException(String reason, List<Input> missing) {
        super(reason);
        this.missing = missing;
    }

    /** Makes an exception for missing inputs, of which one is enough. */
    public static SitingException missing(Input... inputs) {
        StringBuilder text = new StringBuilder();
        for (Input input : inputs) {
            text.append(text.isEmpty() ? "" : ", or ").append("the ").append(input.label()).append(" (").append(input.key()).append(')');
        }
        return new SitingException(text + " is missing", List.of(inputs));
    }

    /** Returns the inputs that are missing; empty where something else is wrong. */
    public List<Input> missing() {
        return missing == null ? List.of() : missing;
    }
}
