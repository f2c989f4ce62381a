package slopewright.ui.review.internal;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import slopewright.checks.Outcome;
import slopewright.exchange.sheet.Sheet;
import slopewright.exchange.sheet.SheetCell;
import slopewright.exchange.sheet.SheetFile;
import slopewright.ui.MessageTexts;

/** Outcomes as text: columns parted by tabs, an HTML table, comma-separated values. */
public final class FindingsText {

    private FindingsText() {
    }

    private static List<String> cells(Outcome outcome) {
        List<String> cells = new ArrayList<>();
        Stream.of(OutcomeColumn.values()).forEach(column -> cells.add(column.text(outcome)));
        cells.add(MessageTexts.of(outcome.explanation()));
        return cells;
    }

    private static List<String> titles() {
        List<String> titles = new ArrayList<>();
        Stream.of(OutcomeColumn.values()).forEach(column -> titles.add(column.title()));
        titles.add(Messages.get("findings.column.explanation"));
        return titles;
    }

    /** Returns an outcome as one line, columns parted by tabs. */
    public static String line(Outcome outcome) {
        return String.join("\t", cells(outcome));
    }

    /** Returns outcomes as lines, columns parted by tabs, the headings first. */
    public static String tabs(List<Outcome> outcomes) {
        return Stream.concat(Stream.of(String.join("\t", titles())), outcomes.stream().map(FindingsText::line))
                .collect(Collectors.joining("\n", "", "\n"));
    }

    /** Returns outcomes as an HTML document with one table. */
    public static String html(List<Outcome> outcomes) {
        StringBuilder text = new StringBuilder("<!DOCTYPE html>\n<html><head><meta charset=\"utf-8\"><title>")
                .append(Messages.get("findings.title")).append("</title></head>\n<body><table border=\"1\" cellspacing=\"0\">\n");
        row(text, "th", titles());
        outcomes.forEach(outcome -> row(text, "td", cells(outcome)));
        return text.append("</table></body></html>\n").toString();
    }

    private static void row(StringBuilder text, String tag, List<String> cells) {
        text.append("<tr>");
        cells.forEach(cell -> text.append('<').append(tag).append('>').append(escaped(cell)).append("</").append(tag).append('>'));
        text.append("</tr>\n");
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    /** Returns outcomes as comma-separated values, the headings first; no cell is a formula. */
    public static String csv(List<Outcome> outcomes) {
        List<List<SheetCell>> rows = outcomes.stream().map(outcome -> cells(outcome).stream().map(SheetCell::text).toList()).toList();
        return new String(SheetFile.csv(new Sheet(Messages.get("findings.title"), titles(), rows, List.of())), StandardCharsets.UTF_8);
    }

    /**
     * Returns outcomes in the form that the name of a file asks for.
     *
     * @param outcomes the outcomes
     * @param name     a name that ends in {@code .html}, {@code .csv} or otherwise for columns parted by tabs
     */
    public static byte[] file(List<Outcome> outcomes, String name) {
        String text = name.endsWith(".html") ? html(outcomes) : name.endsWith(".csv") ? csv(outcomes) : tabs(outcomes);
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
