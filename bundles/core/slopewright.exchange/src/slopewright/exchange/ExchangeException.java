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
     * Makes one exception of several, for a file with several faults.
     *
     * @param faults the faults in the order of the file, at least one
     */
    public static ExchangeException of(List<ExchangeException> faults) {
        return new ExchangeException(faults.stream().flatMap(fault -> fault.messages.stream()).toList());
    }

    /** Returns what is wrong, one line each, in the order of the file. */
    public List<String> messages() {
        return messages;
    }
}
