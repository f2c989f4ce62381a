package slopewright.ui.review.internal.book;

import java.util.Comparator;
import java.util.Locale;
import java.util.function.Function;

import slopewright.checks.BookKeeping;
import slopewright.standards.Provenance;
import slopewright.standards.ValueBook;
import slopewright.ui.review.internal.Messages;

/** What is said of a value of the book, one column each. */
enum BookColumn {
    /** How many results rest on it. */
    RESULTS(true, entry -> String.valueOf(entry.restsOnIt()), Comparator.comparingInt(ValueBook.Entry::restsOnIt).reversed()),
    /** What it is. */
    VALUE(false, BookTexts::name, Comparator.comparing(BookTexts::name)),
    /** The number of the rule set. */
    NUMBER(true, BookTexts::number, Comparator.comparingDouble(ValueBook.Entry::value)),
    /** The rule set. */
    RULES(false, ValueBook.Entry::ruleSet, Comparator.comparing(ValueBook.Entry::ruleSet)),
    /** How well it is known. */
    PROVENANCE(false, BookTexts::provenance, Comparator.comparing(BookColumn::known).reversed()),
    /** Where it comes from. */
    SOURCE(false, ValueBook.Entry::source, Comparator.comparing(ValueBook.Entry::source)) {
        @Override
        String text(BookKeeping.Row row) {
            return BookTexts.source(row);
        }
    },
    /** What was decided. */
    DECISION(false, BookTexts::decision, Comparator.comparing(ValueBook.Entry::decision)),
    /** Against what. */
    COMPARED(false, BookTexts::compared, Comparator.comparing(BookTexts::compared)),
    /** Who, and who signed it off. */
    PEOPLE(false, BookTexts::people, Comparator.comparing(BookTexts::people));

    private final boolean right;
    private final Function<ValueBook.Entry, String> text;
    private final Comparator<ValueBook.Entry> order;

    BookColumn(boolean right, Function<ValueBook.Entry, String> text, Comparator<ValueBook.Entry> order) {
        this.right = right;
        this.text = text;
        this.order = order;
    }

    private static int known(ValueBook.Entry entry) {
        for (Provenance provenance : Provenance.values()) {
            if (provenance.key().equals(entry.provenance())) {
                return provenance.ordinal();
            }
        }
        return Integer.MAX_VALUE;
    }

    String title() {
        return Messages.get("book.column." + name().toLowerCase(Locale.ROOT));
    }

    boolean isRight() {
        return right;
    }

    String text(BookKeeping.Row row) {
        return text.apply(row.entry());
    }

    Comparator<BookKeeping.Row> order() {
        return Comparator.comparing(BookKeeping.Row::entry, order);
    }
}
