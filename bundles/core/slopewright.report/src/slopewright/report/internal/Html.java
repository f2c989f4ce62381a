package slopewright.report.internal;

import java.util.List;

/** Collects an XHTML document. */
final class Html {

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

    /** Adds a table of names and values. */
    Html facts(List<String[]> facts) {
        open("table class=\"facts\"");
        facts.forEach(fact -> open("tr").element("th", fact[0]).element("td", fact[1]).close("tr"));
        return close("table");
    }

    static String escaped(String content) {
        return content.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
