package slopewright.exchange.sheet;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

import slopewright.evaluation.MadeFrom;
import slopewright.messages.MessageRenderer;

/**
 * A table for people.
 *
 * @param title   its title, 31 letters at most, as spreadsheets have it
 * @param columns names of its columns, with the unit where there is one
 * @param rows    its rows, each with a cell for every column
 * @param notes   what a reader must know, one sentence each
 * @param words   the words of its language
 * @param made    what it was made from; empty for a table that is printed on a terminal or copied
 */
public record Sheet(String title, List<String> columns, List<List<SheetCell>> rows, List<String> notes, SheetWords words,
        Optional<MadeFrom> made) {

    private static final int MOST_TITLE = 31;

    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException where a row has more or fewer cells than there are columns, or the title is too long
     */
    public Sheet {
        Objects.requireNonNull(title);
        Objects.requireNonNull(words);
        Objects.requireNonNull(made);
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        notes = List.copyOf(notes);
        int width = columns.size();
        if (title.length() > MOST_TITLE || rows.stream().anyMatch(row -> row.size() != width)) {
            throw new IllegalArgumentException("the table " + title + " has rows of another width, or a title that is too long");
        }
    }

    /** Makes a table that does not say what it was made from. */
    public Sheet(String title, List<String> columns, List<List<SheetCell>> rows, List<String> notes, SheetWords words) {
        this(title, columns, rows, notes, words, Optional.empty());
    }

    /** Makes a table that is printed or copied, with columns that programs know. */
    public Sheet(String title, List<String> columns, List<List<SheetCell>> rows, List<String> notes) {
        this(title, columns, rows, notes, new SheetWords(MessageRenderer.of(Locale.ENGLISH)));
    }

    /** Returns the table with what it was made from. */
    public Sheet from(MadeFrom origin) {
        return new Sheet(title, columns, rows, notes, words, Optional.of(origin));
    }
}
