package slopewright.ui.elements;

import java.util.ArrayList;
import java.util.List;

/**
 * A line of what a program for tables copies. A cell in double quotes may hold tabulators and ends of lines, and its own quotes twice; a
 * quote that nothing closes is a letter like any other.
 *
 * @param number where it begins in the text, from 1, empty lines counted
 * @param cells  its cells, without what surrounds them
 */
record PastedLine(int number, List<String> cells) {

    /** Returns the lines of a text that hold anything. */
    static List<PastedLine> of(String text) {
        List<PastedLine> lines = new ArrayList<>();
        String unix = text.replace("\r\n", "\n").replace('\r', '\n');
        int number = 1;
        int at = 0;
        while (at < unix.length()) {
            List<String> cells = new ArrayList<>();
            int begun = at;
            int after = at - 1;
            do {
                int from = after + 1;
                after = end(unix, from);
                cells.add(cell(unix.substring(from, after)));
            } while (after < unix.length() && unix.charAt(after) == '\t');
            if (cells.stream().anyMatch(cell -> !cell.isEmpty())) {
                lines.add(new PastedLine(number, List.copyOf(cells)));
            }
            number += (int) unix.substring(begun, after).chars().filter(letter -> letter == '\n').count() + 1;
            at = after + 1;
        }
        return lines;
    }

    /** Where the cell that begins here ends: at the tabulator or end of line after it. */
    private static int end(String text, int from) {
        int plain = from;
        while (plain < text.length() && text.charAt(plain) != '\t' && text.charAt(plain) != '\n') {
            plain++;
        }
        if (from >= text.length() || text.charAt(from) != '"') {
            return plain;
        }
        int at = from + 1;
        while (at < text.length()) {
            if (text.charAt(at) == '"') {
                boolean twice = at + 1 < text.length() && text.charAt(at + 1) == '"';
                if (!twice) {
                    boolean closes = at + 1 == text.length() || text.charAt(at + 1) == '\t' || text.charAt(at + 1) == '\n';
                    return closes ? at + 1 : plain;
                }
                at++;
            }
            at++;
        }
        return plain;
    }

    private static String cell(String raw) {
        String text = raw.strip();
        boolean quoted = text.length() > 1 && text.startsWith("\"") && text.endsWith("\"");
        return quoted ? text.substring(1, text.length() - 1).replace("\"\"", "\"").strip() : text;
    }
}
