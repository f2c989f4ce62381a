package slopewright.model.internal;

import org.eclipse.emf.ecore.xmi.XMIException;

import slopewright.messages.Message;
import slopewright.messages.Reasoned;

/** Something in a project file that the format allows and a project does not. The message is the reason alone. */
final class StrictReadingException extends XMIException implements Reasoned {

    private static final long serialVersionUID = 1L;

    private final transient Message reason;

    StrictReadingException(Message reason, String location, int line, int column) {
        super(reason.key(), location, line, column);
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
