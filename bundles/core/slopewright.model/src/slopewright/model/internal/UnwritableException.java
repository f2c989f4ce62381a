package slopewright.model.internal;

import slopewright.messages.Message;
import slopewright.messages.Reasoned;

/** A project that no file can hold; says why as data. */
public final class UnwritableException extends IllegalStateException implements Reasoned {

    private static final long serialVersionUID = 1L;

    private final transient Message reason;

    /** Makes an exception for a reason. */
    public UnwritableException(Message reason) {
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
