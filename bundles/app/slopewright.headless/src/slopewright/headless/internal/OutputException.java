package slopewright.headless.internal;

/** What a command made could not be written whole; what was there is as it was. */
final class OutputException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    OutputException(String message) {
        super(message);
    }
}
