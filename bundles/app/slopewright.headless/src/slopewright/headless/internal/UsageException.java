package slopewright.headless.internal;

/** The words of a command do not fit together: one line that says what and what to do. */
final class UsageException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    UsageException(String message) {
        super(message);
    }
}
