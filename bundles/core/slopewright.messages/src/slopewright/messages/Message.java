package slopewright.messages;

import java.util.Arrays;
import java.util.Collection;
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
    /** A number nearer to zero is written with an exponent: a file may hold one with hundreds of zeros. */
    private static final double LEAST_SPELLED_OUT = 1e-9;

    /** Copies the arguments. */
    public Message {
        Objects.requireNonNull(key);
        arguments = List.copyOf(arguments);
    }

    /** Makes a message. */
    public static Message of(String key, Argument... arguments) {
        return new Message(key, List.of(arguments));
    }

    /**
     * Makes a message of values as they come: arguments as they are, numbers with every digit that they have, what was thrown as why,
     * lists with each value in turn, and everything else as the name that it is in every language.
     *
     * @param key    key in the catalogues
     * @param values what is put into its places
     */
    public static Message said(String key, Object... values) {
        return new Message(key, Arrays.stream(values).map(Message::argument).toList());
    }

    private static Argument argument(Object value) {
        if (value instanceof Argument argument) {
            return argument;
        }
        if (value instanceof Throwable thrown) {
            return Reasoned.of(thrown);
        }
        if (value instanceof Collection<?> values) {
            return Words.list(values.stream().map(Message::argument).toList());
        }
        boolean plain = value instanceof Number number
                && (number.doubleValue() == 0 || Math.abs(number.doubleValue()) >= LEAST_SPELLED_OUT);
        return plain ? Words.quantity(((Number) value).doubleValue(), Notation.EXACT) : Words.name(String.valueOf(value));
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
