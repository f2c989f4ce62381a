package slopewright.headless.internal;

/** A file that can not be read: one line that names file, line or element, and reason. */
final class InputException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    InputException(String message) {
        super(message);
    }
}
