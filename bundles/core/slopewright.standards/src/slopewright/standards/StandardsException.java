package slopewright.standards;

/** Data of a rule set that cannot be trusted: the message names the file, the line and the reason. */
public final class StandardsException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** Makes the exception; the line is 0 where the whole file is meant. */
    public StandardsException(String file, int line, String reason) {
        super(line > 0 ? file + ":" + line + ": " + reason : file + ": " + reason);
    }
}
