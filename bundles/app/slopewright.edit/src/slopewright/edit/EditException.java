package slopewright.edit;

import slopewright.messages.Message;
import slopewright.messages.Reasoned;

/** An edit that cannot be made, with the reason for people; the project is as it was before. Its own message is in English. */
public final class EditException extends RuntimeException implements Reasoned {

    private static final long serialVersionUID = 1L;

    private final transient Message reason;

    /**
     * Makes the exception.
     *
     * @param reason one sentence for people: what cannot be done and why
     */
    public EditException(Message reason) {
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
