package slopewright.geometry;

/** A text is no finite decimal number; says why as data, so that it can be said in any language. Its message is in English. */
public final class DecimalException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final String text;
    private final boolean large;

    DecimalException(String text, boolean large) {
        super("'" + text + (large ? "' is too large" : "' is not a number"));
        this.text = text;
        this.large = large;
    }

    /** Returns what was written. */
    public String text() {
        return text;
    }

    /** Returns whether it is a number, but beyond all that a program can hold. */
    public boolean isTooLarge() {
        return large;
    }
}
