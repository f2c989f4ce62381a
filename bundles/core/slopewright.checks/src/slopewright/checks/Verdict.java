package slopewright.checks;

import java.util.Locale;

import slopewright.messages.Argument;
import slopewright.messages.Words;

/** What an outcome comes to, one word everywhere: the first that holds. */
public enum Verdict {
    /** The rule is broken, however well its limit is known. */
    NOT_MET,
    /** An input is missing, or the rule is met on a value that nobody confirmed. */
    TO_CLEAR_UP,
    /** The rule is met. */
    MET,
    /** The rule has nothing to say. */
    NOT_APPLICABLE;

    /** Returns the word used in files and output: {@code not-met}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Returns the word for people, as an argument of a message. */
    public Argument term() {
        return Words.term("verdict." + key());
    }
}
