package slopewright.evaluation.site;

import slopewright.messages.Message;

/** What was typed is no place; its reason can be said in any language. */
public final class PlaceException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final transient Message reason;

    PlaceException(Message reason, Throwable cause) {
        super(reason.english(), cause);
        this.reason = reason;
    }

    PlaceException(Message reason) {
        this(reason, null);
    }

    /** Returns why. */
    public Message reason() {
        return reason;
    }
}
