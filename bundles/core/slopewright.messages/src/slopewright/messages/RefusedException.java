package slopewright.messages;

/** Something that cannot be taken; says why as data. Its message is in English. */
public final class RefusedException extends IllegalArgumentException implements Reasoned {

    private static final long serialVersionUID = 1L;

    private final transient Message reason;

    /** Makes an exception for a reason. */
    public RefusedException(Message reason) {
        this.reason = reason;
    }

    @Override
    public Message reason() {
        return reason;
    }

    @Override
    public String getMessage() {
        return reason.english();
    }
}
