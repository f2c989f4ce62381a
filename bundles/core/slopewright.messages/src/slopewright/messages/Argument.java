package slopewright.messages;

import java.util.List;
import java.util.Locale;
import java.util.Objects;

/** What is put into a sentence: a quantity, a name, a word of the catalogue, another sentence, or several of these in a row. */
public sealed interface Argument permits Argument.Quantity, Argument.Name, Argument.Term, Argument.Series, Message {

    /** Returns its words in English with metres, for programs, logs and exceptions. */
    default String english() {
        return MessageRenderer.of(Locale.ENGLISH).write(this);
    }

    /** Returns whether it is a name that says nothing. */
    default boolean isBlank() {
        return this instanceof Name name && name.text().isBlank();
    }

    /**
     * A number with the way in which it is written.
     *
     * @param value    the number in the unit that the notation names
     * @param notation how it is written
     */
    record Quantity(double value, Notation notation) implements Argument {
        /** Refuses a missing notation. */
        public Quantity {
            Objects.requireNonNull(notation);
        }
    }

    /**
     * A name that is written as it is in every language: of an element, a document, a rule set, a file.
     *
     * @param text the name
     */
    record Name(String text) implements Argument {
        /** Takes out what could end a line or steer a terminal: a name may come from a hostile file. */
        public Name {
            text = Printable.of(text);
        }

        /** Spelled out: what a record has by itself is written anew at every start. */
        @Override
        public boolean equals(Object other) {
            return other instanceof Name that && text.equals(that.text);
        }

        @Override
        public int hashCode() {
            return text.hashCode();
        }

        /** Returns the name. */
        @Override
        public String toString() {
            return text;
        }
    }

    /**
     * A word of the catalogue.
     *
     * @param key its key, without the prefix {@code term.}
     */
    record Term(String key) implements Argument {
        /** Refuses a missing key. */
        public Term {
            Objects.requireNonNull(key);
        }

        /** Spelled out, as that of a name. */
        @Override
        public boolean equals(Object other) {
            return other instanceof Term that && key.equals(that.key);
        }

        @Override
        public int hashCode() {
            return key.hashCode();
        }

        /** Returns the word in English. */
        @Override
        public String toString() {
            return english();
        }
    }

    /**
     * Several arguments, written as a list: {@code a, b and c}.
     *
     * @param items the arguments
     */
    record Series(List<Argument> items) implements Argument {
        /** Copies the list. */
        public Series {
            items = List.copyOf(items);
        }
    }
}
