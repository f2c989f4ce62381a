package slopewright.report.internal;

import java.util.ArrayList;
import java.util.List;

/** Collects an XHTML document. Every text is escaped; only {@link #raw} takes markup. */
final class Html {

    private static final String BODY = "<tbody>";

    private final StringBuilder text = new StringBuilder();
    private final List<Heading> headings = new ArrayList<>();
    private int chapter;
    private int section;
    private int figure;

    /**
     * A numbered heading.
     *
     * @param number of a chapter, or of a chapter and a section
     * @param title  its words
     * @param id     its name as a target
     */
    record Heading(String number, String title, String id) {

        boolean isChapter() {
            return number.indexOf('.') < 0;
        }

        @Override
        public String toString() {
            return number + "  " + title;
        }
    }

    /** Returns the numbered headings so far. */
    List<Heading> headings() {
        return List.copyOf(headings);
    }

    /** Adds the heading of a numbered chapter. */
    Html chapter(String title) {
        chapter++;
        section = 0;
        return heading("h2", String.valueOf(chapter), title);
    }

    /** Adds the heading of a section, numbered inside its chapter. */
    Html section(String title) {
        section++;
        return heading("h3", chapter + "." + section, title);
    }

    /** Adds a picture with its number and title below it. */
    Html figure(String title, String picture) {
        figure++;
        return open("div class=\"drawing\"").raw(picture).element("p class=\"caption\"", "Figure " + figure + "  " + title).close("div");
    }

    /** Returns what was collected so far and goes on with nothing; numbers go on as well. */
    String take() {
        String taken = text.toString();
        text.setLength(0);
        return taken;
    }

    private Html heading(String element, String number, String title) {
        Heading heading = new Heading(number, title, "part-" + number.replace('.', '-'));
        headings.add(heading);
        return element(element + " id=\"" + heading.id() + "\"", heading.toString());
    }

    Html raw(String markup) {
        text.append(markup);
        return this;
    }

    Html open(String element) {
        text.append('<').append(element).append('>');
        return this;
    }

    Html close(String element) {
        text.append("</").append(element).append(">\n");
        return this;
    }

    Html element(String element, String content) {
        int blank = element.indexOf(' ');
        return open(element).say(content).close(blank < 0 ? element : element.substring(0, blank));
    }

    Html say(String content) {
        text.append(escaped(content));
        return this;
    }

    Html row(String cell, List<String> cells) {
        open("tr");
        cells.forEach(one -> element(cell, one));
        return close("tr");
    }

    /** Opens a table whose head is repeated on every page; the widths of its columns are in per cent. */
    Html table(String style, List<Integer> widths, List<String> head) {
        open("table class=\"" + style + "\"").raw("<colgroup>");
        widths.forEach(width -> raw("<col style=\"width:" + width + "%\" />"));
        return raw("</colgroup>\n").open("thead").row("th scope=\"col\"", head).close("thead").open("tbody");
    }

    /** Starts a new group of rows. */
    Html group(String style) {
        if (text.lastIndexOf(BODY) == text.length() - BODY.length()) {
            text.setLength(text.length() - BODY.length());
        } else {
            close("tbody");
        }
        return open("tbody class=\"" + style + "\"");
    }

    /** Closes a table. */
    Html endTable() {
        return close("tbody").close("table");
    }

    /** Adds a table of names and values. */
    Html facts(List<String[]> facts) {
        return facts(facts, 30);
    }

    /** Adds a table of names and values; the column of the names has a width in per cent. */
    Html facts(List<String[]> facts, int names) {
        open("table class=\"facts\"").raw("<colgroup><col style=\"width:" + names + "%\" /><col style=\"width:" + (100 - names)
                + "%\" /></colgroup>\n").open("tbody");
        facts.forEach(fact -> open("tr").element("th scope=\"row\"", fact[0]).element("td", fact[1]).close("tr"));
        return close("tbody").close("table");
    }

    /** Adds a list. */
    Html list(List<String> entries) {
        if (!entries.isEmpty()) {
            open("ul");
            entries.forEach(entry -> element("li", entry));
            close("ul");
        }
        return this;
    }

    /** Escapes text; characters that no XML document may hold become a question mark. */
    static String escaped(String content) {
        StringBuilder safe = new StringBuilder(content.length());
        content.codePoints().forEach(letter -> {
            switch (letter) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                default -> safe.appendCodePoint(isAllowed(letter) ? letter : '?');
            }
        });
        return safe.toString();
    }

    private static boolean isAllowed(int letter) {
        return letter == '\t' || letter == '\n' || letter == '\r' || letter >= 0x20 && letter <= 0xD7FF
                || letter >= 0xE000 && letter <= 0xFFFD || letter >= 0x10000;
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
