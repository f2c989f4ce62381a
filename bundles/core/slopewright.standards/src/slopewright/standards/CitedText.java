package slopewright.standards;

import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Notation;
import slopewright.messages.Words;

/**
 * Reads what the data of a rule set say in words: the title of a source, a clause, a remark. What begins with {@code @} is a key of
 * the catalogues, below {@code cited.}, and is said in the language of the reader; all else is printed as it stands: the title of a
 * document, the number of a clause, a remark in an organisation's own rule set.
 */
public final class CitedText {
    /** What a key begins with. */
    private static final char MARK = '@';
    private static final Argument NOTHING = Words.name("");

    private CitedText() {
    }

    /** Returns what a text of the data says; may be empty. */
    public static Argument of(String text) {
        return text.isEmpty() ? NOTHING : text.charAt(0) == MARK ? Message.of("cited." + text.substring(1)) : Words.name(text);
    }

    /** Returns of a value that another one took the place of its number, and where that came from. */
    public static Argument instead(CitedValue was) {
        return Message.of("cited.instead", Message.of("value.unit", Words.quantity(was.printed(), Notation.EXACT),
                Words.name(was.printedUnit())), was.citation().text());
    }

    /** Returns of a choice that another one took the place of its word, and where that came from. */
    public static Argument instead(CitedChoice was) {
        return Message.of("cited.instead", Words.term("value.word." + was.word().key()), was.citation().text());
    }
}
