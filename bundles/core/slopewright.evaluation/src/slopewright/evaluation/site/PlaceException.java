package slopewright.evaluation.site;

import slopewright.messages.Message;
import slopewright.messages.Reasoned;

/** What was typed is no place; its reason can be said in any language. */
public final class PlaceException extends IllegalArgumentException implements Reasoned {

    private static final long serialVersionUID = 1L;

    private final transient Message reason;

    PlaceException(Message reason, Throwable cause) {
        super(reason.english(), cause);
        this.reason = reason;
    }

    PlaceException(Message reason) {
        this(reason, null);
    }

    @Override
    public Message reason() {
        return reason;
    }
}
