package slopewright.messages;

import java.util.List;
import java.util.Objects;

/**
 * A sentence as data: a key of the catalogues and what is put into its places. Nothing reads the words of a sentence to find something
 * out; what a program needs stands beside it as data.
 *
 * @param key       key in the catalogues
 * @param arguments what is put into the places {@code {0}}, {@code {1}} and so on
 */
public record Message(String key, List<Argument> arguments) implements Argument {
    /** Copies the arguments. */
    public Message {
        Objects.requireNonNull(key);
        arguments = List.copyOf(arguments);
    }

    /** Makes a message. */
    public static Message of(String key, Argument... arguments) {
        return new Message(key, List.of(arguments));
    }

    /** Returns the English sentence. */
    @Override
    public String toString() {
        return english();
    }

    /** Spelled out: what a record has by itself is written anew at every start. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Message message && key.equals(message.key) && arguments.equals(message.arguments);
    }

    @Override
    public int hashCode() {
        int hash = key.hashCode();
        return 31 * hash + arguments.hashCode();
    }
}
