package slopewright.exchange.sheet;

import java.util.List;
import java.util.stream.Stream;

import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Words;

/**
 * The words of a table in one language. Numbers stay as programs read them: the cell is a number, and its text has a decimal point.
 *
 * @param renderer makes the words
 */
public record SheetWords(MessageRenderer renderer) {

    /** Returns a sentence or a title. */
    public String text(Message message) {
        return renderer.render(message);
    }

    /** Returns several sentences. */
    public List<String> texts(List<Message> messages) {
        return messages.stream().map(this::text).toList();
    }

    /** Returns the names of columns, by their keys without {@code sheet.column.}. */
    public Stream<String> columns(String... keys) {
        return Stream.of(keys).map(key -> text(Message.of("sheet.column." + key)));
    }

    /** Returns what stands where something is not known: never zero. */
    public String notKnown() {
        return word(Words.term("report.not-known"));
    }

    /** Returns what stands where a question does not arise. */
    public String notApplicable() {
        return word(Words.term("report.not-applicable"));
    }

    /** Returns a word or a name. */
    public String word(Argument argument) {
        return renderer.write(argument);
    }

    /** Returns a cell for yes or no; one that says so where it is not known. */
    public SheetCell yes(Boolean value) {
        return SheetCell.text(value == null ? notKnown() : word(value ? Words.term("report.yes") : Words.term("report.no")));
    }

    /** Returns a cell with a number rounded to some decimals; one that says so where it is not known. */
    public SheetCell number(Double value, int decimals) {
        return SheetCell.number(value, decimals, notKnown());
    }
}
