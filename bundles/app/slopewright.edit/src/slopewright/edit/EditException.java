package slopewright.edit;

/** An edit that cannot be made, with the reason for people; the project is as it was before. */
public final class EditException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /**
     * Makes the exception.
     *
     * @param message one sentence for people: what cannot be done and why
     */
    public EditException(String message) {
        super(message);
    }
}
