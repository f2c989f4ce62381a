package slopewright.exchange;

/** A file of another format that can not be read: the message names file, line and reason in one line. */
public final class ExchangeException extends Exception {

    private static final long serialVersionUID = 1L;

    /** Makes the exception; the line is 0 where the whole file is meant. */
    public ExchangeException(String file, long line, String reason) {
        super(line > 0 ? file + ":" + line + ": " + reason : file + ": " + reason);
    }
}
