package slopewright.headless.internal;

import java.util.List;

import slopewright.exchange.ExchangeException;
import slopewright.messages.Message;

/** A file that cannot be read: one line for each fault, that names file, line or element, and reason. */
final class InputException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final List<String> messages;

    InputException(String message) {
        this(List.of(message));
    }

    InputException(List<String> messages) {
        super(messages.get(0));
        this.messages = List.copyOf(messages);
    }

    /** Says why a file of another format cannot be read. */
    static InputException of(ExchangeException refused) {
        return new InputException(refused.messages().stream().map(Message::english).toList());
    }

    /** Returns what is wrong, one line each. */
    List<String> messages() {
        return messages;
    }
}
