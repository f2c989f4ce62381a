package slopewright.report.internal.html;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import slopewright.messages.Argument;
import slopewright.messages.Printable;
import slopewright.messages.Words;

/**
 * Collects an XHTML document in one language. Every text is escaped; only {@link #raw} takes markup. Headings, heads of tables and
 * paragraphs are named by their keys in the catalogues.
 */
public final class Html {

    private static final String BODY = "<tbody>";

    private final StringBuilder markup = new StringBuilder();
    private final List<Heading> headings = new ArrayList<>();
    private final ReportWords words;
    private int chapter;
    private int section;
    private int figure;

    /** Starts an empty document. */
    public Html(ReportWords words) {
        this.words = words;
    }

    /**
     * A numbered heading.
     *
     * @param number of a chapter, or of a chapter and a section
     * @param title  its words
     * @param id     its name as a target
     */
    public record Heading(String number, String title, String id) {

        /** Returns whether it is that of a chapter. */
        public boolean isChapter() {
            return number.indexOf('.') < 0;
        }

        @Override
        public String toString() {
            return number + "  " + title;
        }
    }

    /** Returns the words of the document. */
    public ReportWords words() {
        return words;
    }

    /** Returns the numbered headings so far. */
    public List<Heading> headings() {
        return List.copyOf(headings);
    }

    /** Adds the heading of a numbered chapter that follows on the page: {@code report.chapter.KEY}. */
    public Html chapter(String key) {
        return chapter("h2", words.say("chapter." + key));
    }

    /** Adds the heading of a numbered chapter about something that has a name. */
    public Html chapterOf(String title) {
        return chapter("h2", title);
    }

    private Html chapter(String element, String title) {
        chapter++;
        section = 0;
        return heading(element, String.valueOf(chapter), title);
    }

    /** Adds the heading of a section, numbered inside its chapter: {@code report.section.KEY}. */
    public Html section(String key) {
        return sectionOf(words.say("section." + key));
    }

    /** Adds the heading of a section about something that has a name. */
    public Html sectionOf(String title) {
        section++;
        return heading("h3", chapter + "." + section, title);
    }

    /** Adds the heading of a part of a sheet, without a number: {@code report.section.KEY}. */
    public Html part(String key, Argument... arguments) {
        return element("h2 class=\"flow\"", words.say("section." + key, arguments));
    }

    /** Adds a picture with its number and title below it. */
    public Html figure(String title, String picture) {
        figure++;
        return open("div class=\"drawing\"").raw(picture)
                .element("p class=\"caption\"", words.say("figure", Words.count(figure), Words.name(title))).close("div");
    }

    /** Adds a paragraph of a sentence: {@code report.KEY}. */
    public Html paragraph(String key, Argument... arguments) {
        return element("p", words.say(key, arguments));
    }

    /** Adds a remark in small type: {@code report.KEY}. */
    public Html remark(String key, Argument... arguments) {
        return element("p class=\"small\"", words.say(key, arguments));
    }

    /** Adds a sentence that must not be overlooked: {@code report.KEY}. */
    public Html alert(String key, Argument... arguments) {
        return element("p class=\"alert\"", words.say(key, arguments));
    }

    /** Returns what was collected so far and goes on with nothing; numbers go on as well. */
    public String take() {
        String taken = markup.toString();
        markup.setLength(0);
        return taken;
    }

    private Html heading(String element, String number, String title) {
        Heading heading = new Heading(number, title, "part-" + number.replace('.', '-'));
        headings.add(heading);
        return element(element + " id=\"" + heading.id() + "\"", heading.toString());
    }

    /** Adds markup. */
    public Html raw(String more) {
        markup.append(more);
        return this;
    }

    /** Opens an element, with its attributes. */
    public Html open(String element) {
        markup.append('<').append(element).append('>');
        return this;
    }

    /** Closes an element. */
    public Html close(String element) {
        markup.append("</").append(element).append(">\n");
        return this;
    }

    /** Adds an element, with its attributes, that holds a text. */
    public Html element(String element, String content) {
        int blank = element.indexOf(' ');
        return open(element).text(content).close(blank < 0 ? element : element.substring(0, blank));
    }

    /** Adds a text. */
    public Html text(String content) {
        markup.append(escaped(content));
        return this;
    }

    /** Adds a row of a table. */
    public Html row(List<String> cells) {
        return row("td", cells);
    }

    /** Adds a row of a table with a style. */
    public Html styledRow(String style, List<String> cells) {
        open("tr class=\"" + style + "\"");
        cells.forEach(content -> element("td", content));
        return close("tr");
    }

    private Html row(String cell, List<String> cells) {
        open("tr");
        cells.forEach(content -> element(cell, content));
        return close("tr");
    }

    /**
     * Opens a table whose head is repeated on every page.
     *
     * @param style  its class
     * @param widths of its columns, per cent
     * @param heads  keys of the heads of its columns, without the prefix {@code report.head.}
     * @return this
     */
    public Html table(String style, List<Integer> widths, String... heads) {
        return tableOf(style, widths, Stream.of(heads).map(head -> words.say("head." + head)).toList());
    }

    /** Opens a table whose head has words of its own. */
    public Html tableOf(String style, List<Integer> widths, List<String> heads) {
        open("table class=\"" + style + "\"").raw("<colgroup>");
        widths.forEach(width -> raw("<col style=\"width:" + width + "%\" />"));
        return raw("</colgroup>\n").open("thead").row("th scope=\"col\"", heads).close("thead").open("tbody");
    }

    /** Starts a new group of rows. */
    public Html group(String style) {
        if (markup.lastIndexOf(BODY) == markup.length() - BODY.length()) {
            markup.setLength(markup.length() - BODY.length());
        } else {
            close("tbody");
        }
        return open("tbody class=\"" + style + "\"");
    }

    /** Closes a table. */
    public Html endTable() {
        return close("tbody").close("table");
    }

    /** Starts names and values in the words of the document. */
    public Facts newFacts() {
        return new Facts(words);
    }

    /** Adds a table of names and values. */
    public Html facts(Facts facts) {
        return facts(facts, 30);
    }

    /** Adds a table of names and values; the column of the names has a width in per cent. */
    public Html facts(Facts facts, int names) {
        open("table class=\"facts\"").raw("<colgroup><col style=\"width:" + names + "%\" /><col style=\"width:" + (100 - names)
                + "%\" /></colgroup>\n").open("tbody");
        facts.rows().forEach(fact -> open("tr").element("th scope=\"row\"", fact.get(0)).element("td", fact.get(1)).close("tr"));
        return close("tbody").close("table");
    }

    /** Adds names and values two beside each other, read from left to right. */
    public Html pairs(Facts facts) {
        open("table class=\"facts\"").raw("<colgroup><col style=\"width:18%\" /><col style=\"width:32%\" /><col style=\"width:18%\" />"
                + "<col style=\"width:32%\" /></colgroup>\n").open("tbody");
        List<List<String>> rows = facts.rows();
        for (int i = 0; i < rows.size(); i += 2) {
            boolean alone = i + 1 == rows.size();
            open("tr").element("th scope=\"row\"", rows.get(i).get(0)).element(alone ? "td colspan=\"3\"" : "td", rows.get(i).get(1));
            if (!alone) {
                element("th scope=\"row\"", rows.get(i + 1).get(0)).element("td", rows.get(i + 1).get(1));
            }
            close("tr");
        }
        return close("tbody").close("table");
    }

    /** Adds a list. */
    public Html list(List<String> entries) {
        if (!entries.isEmpty()) {
            open("ul");
            entries.forEach(entry -> element("li", entry));
            close("ul");
        }
        return this;
    }

    /** Adds a numbered list. */
    public Html steps(List<String> steps) {
        open("ol class=\"steps\"");
        steps.forEach(step -> element("li", step));
        return close("ol");
    }

    /** Adds a block for signatures. */
    public Html signatures(List<String> roleKeys) {
        open("div class=\"signatures\"").element("p class=\"head\"", words.say("signatures")).table("sign", List.of(25, 30, 15, 30), "part",
                "name", "date", "signature");
        roleKeys.forEach(role -> row(List.of(words.say("role." + role), "", "", "")));
        return endTable().close("div");
    }

    /** Escapes text; characters that no XML document may hold become a question mark, those that steer a space. */
    public static String escaped(String content) {
        StringBuilder safe = new StringBuilder(content.length());
        content.codePoints().forEach(letter -> {
            switch (letter) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                default -> safe.appendCodePoint(!isAllowed(letter) ? '?' : letter > ' ' && Printable.isSteering(letter) ? ' ' : letter);
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
        return markup.toString();
    }
}
