package slopewright.report;

/** A document that cannot be written; the message says which and why. */
public final class ReportException extends Exception {

    private static final long serialVersionUID = 1L;

    /** Makes the exception. */
    public ReportException(String message, Throwable cause) {
        super(message, cause);
    }

    /** Makes the exception for a fault that was found here. */
    public ReportException(String message) {
        super(message);
    }
}
