package slopewright.headless.internal;

import java.util.List;

/** Writes lines of comma-separated values. */
final class Csv {

    private Csv() {
    }

    static String line(List<String> cells) {
        return String.join(",", cells.stream().map(Csv::cell).toList()) + "\n";
    }

    private static String cell(String text) {
        boolean quoted = text.indexOf(',') >= 0 || text.indexOf('"') >= 0 || text.indexOf('\n') >= 0;
        return quoted ? '"' + text.replace("\"", "\"\"") + '"' : text;
    }
}
