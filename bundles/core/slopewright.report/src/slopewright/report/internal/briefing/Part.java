package slopewright.report.internal.briefing;

import java.util.List;
import java.util.Objects;

/**
 * One part of a paper: a table, and lines under it.
 *
 * @param title its heading
 * @param heads heads of the columns; empty for a table of names and values
 * @param rows  the rows of the table
 * @param lines what is said under it
 */
record Part(String title, List<String> heads, List<List<String>> rows, List<String> lines) {

    Part {
        Objects.requireNonNull(title);
        heads = List.copyOf(heads);
        rows = List.copyOf(rows);
        lines = List.copyOf(lines);
    }
}
