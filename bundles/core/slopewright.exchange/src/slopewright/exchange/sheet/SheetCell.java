package slopewright.exchange.sheet;

import java.util.Objects;
import java.util.OptionalDouble;

import slopewright.exchange.internal.PlainNumbers;
import slopewright.messages.Printable;

/**
 * One cell of a table: text, or a number.
 *
 * @param text   the text; the number as it is printed where there is one
 * @param number the number, rounded as it is printed; empty in a cell of text
 */
public record SheetCell(String text, OptionalDouble number) {

    /** Refuses missing parts; takes out of the text what would steer it. */
    public SheetCell {
        text = Printable.of(text);
        Objects.requireNonNull(number);
    }

    /** Returns a cell of text; an empty one where there is none. */
    public static SheetCell text(String text) {
        return new SheetCell(text == null ? "" : text, OptionalDouble.empty());
    }

    /** Returns a cell of a table for programs, with a number that is known, rounded to some decimals. */
    public static SheetCell number(double value, int decimals) {
        return number(Double.valueOf(value), decimals, "not known");
    }

    /** Returns a cell with a number rounded to some decimals; another text where there is none. */
    public static SheetCell number(Double value, int decimals, String otherwise) {
        if (value == null || !Double.isFinite(value)) {
            return text(otherwise);
        }
        String printed = PlainNumbers.fixed(value, decimals);
        return new SheetCell(printed, OptionalDouble.of(Double.parseDouble(printed)));
    }
}
