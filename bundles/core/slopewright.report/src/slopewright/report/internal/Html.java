package slopewright.report.internal;

import java.util.List;

/** Collects an XHTML document. Every text is escaped; only {@link #raw} takes markup. */
final class Html {

    private static final String BODY = "<tbody>";

    private final StringBuilder text = new StringBuilder();

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
        open("table class=\"facts\"").raw("<colgroup><col style=\"width:30%\" /><col style=\"width:70%\" /></colgroup>\n").open("tbody");
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
