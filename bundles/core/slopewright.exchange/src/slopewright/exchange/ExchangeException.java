package slopewright.exchange;

import java.util.List;

/** A file of another format that cannot be read. Each message names file, line and reason in one line. */
public final class ExchangeException extends Exception {

    private static final long serialVersionUID = 1L;

    private final List<String> messages;

    /** Makes the exception; the line is 0 where the whole file is meant. */
    public ExchangeException(String file, long line, String reason) {
        this(List.of(line > 0 ? file + ":" + line + ": " + reason : file + ": " + reason));
    }

    private ExchangeException(List<String> messages) {
        super(messages.size() == 1 ? messages.get(0) : messages.get(0) + " (and " + (messages.size() - 1) + " more)");
        this.messages = List.copyOf(messages);
    }

    /**
     * Makes one exception of several faults of a file.
     *
     * @param messages what is wrong, in the order of the file, at least one, each with file, line and reason
     */
    public static ExchangeException of(List<String> messages) {
        return new ExchangeException(messages);
    }

    /** Returns what is wrong, one line each, in the order of the file. */
    public List<String> messages() {
        return messages;
    }
}
