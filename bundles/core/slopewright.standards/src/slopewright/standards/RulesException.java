package slopewright.standards;

import slopewright.messages.Message;
import slopewright.messages.Reasoned;

/** A rule set, or a value of one, that does not exist or cannot be used as it is asked for; the message says which. */
public final class RulesException extends IllegalArgumentException implements Reasoned {

    private static final long serialVersionUID = 1L;

    private final transient Message reason;

    /** Makes the exception for a reason. */
    public RulesException(Message reason) {
        super(reason.english());
        this.reason = reason;
    }

    @Override
    public Message reason() {
        return reason == null ? Message.said("plain", getMessage()) : reason;
    }
}
