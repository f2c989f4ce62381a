package slopewright.model.internal;

import org.eclipse.emf.ecore.xmi.XMIException;

/** Something in a project file that the format allows and a project does not. The message is the reason alone. */
final class StrictReadingException extends XMIException {

    private static final long serialVersionUID = 1L;

    private final String reason;

    StrictReadingException(String reason, String location, int line, int column) {
        super(reason, location, line, column);
        this.reason = reason;
    }

    @Override
    public String getMessage() {
        return reason;
    }
}
