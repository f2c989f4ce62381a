package slopewright.report;

import slopewright.messages.Message;
import slopewright.messages.Reasoned;

/** A document that cannot be written; its reason says which and why, and its own message the same in English. */
public final class ReportException extends Exception implements Reasoned {

    private static final long serialVersionUID = 1L;

    private final transient Message reason;

    /** Makes the exception. */
    public ReportException(Message reason, Throwable cause) {
        super(cause);
        this.reason = reason;
    }

    /** Makes the exception for a fault that was found here. */
    public ReportException(Message reason) {
        this(reason, null);
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
