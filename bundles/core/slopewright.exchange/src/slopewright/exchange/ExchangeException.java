package slopewright.exchange;

import java.util.List;

import slopewright.messages.Message;
import slopewright.messages.Reasoned;

/** A file of another format that cannot be read. Each reason names file, line and what is wrong; its own message says so in English. */
public final class ExchangeException extends Exception implements Reasoned {

    private static final long serialVersionUID = 1L;

    private final transient List<Message> messages;

    /** Makes the exception; the line is 0 where the whole file is meant. */
    public ExchangeException(String file, long line, Message reason) {
        this(List.of(line > 0 ? Message.said("survey-file.at-line", file, line, reason)
                : Message.said("survey-file.at-file", file, reason)));
    }

    private ExchangeException(List<Message> messages) {
        this.messages = List.copyOf(messages);
    }

    /**
     * Makes one exception of several faults of a file.
     *
     * @param messages what is wrong, in the order of the file, at least one, each with file, line and reason
     */
    public static ExchangeException of(List<Message> messages) {
        return new ExchangeException(messages);
    }

    /** Returns what is wrong, one line each, in the order of the file. */
    public List<Message> messages() {
        return messages;
    }

    /** Returns what is wrong first, and how much else. */
    @Override
    public Message reason() {
        return messages.size() == 1 ? messages.get(0) : Message.said("survey-file.and-more", messages.get(0), messages.size() - 1);
    }

    @Override
    public String getMessage() {
        return reason().english();
    }
}
