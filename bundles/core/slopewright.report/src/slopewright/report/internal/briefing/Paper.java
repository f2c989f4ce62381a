package slopewright.report.internal.briefing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;

import slopewright.evaluation.MadeFrom;
import slopewright.messages.Message;
import slopewright.messages.Printable;
import slopewright.report.Cautions;
import slopewright.report.ReportException;
import slopewright.report.ReportOptions;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;
import slopewright.report.internal.template.PageFrame;

/** A paper of a few parts, said in the same words on a page, on a telephone and as plain text. */
final class Paper {
    private static final String PHONE_STYLE = "body{font:18px/1.45 sans-serif;margin:0 auto;padding:12px;max-width:40em;color:#000;"
            + "background:#fff}h1{font-size:1.4em;margin:.2em 0}h2{font-size:1.15em;margin:1.2em 0 .3em;border-bottom:2px solid #000}"
            + "table{border-collapse:collapse;width:100%}th,td{text-align:left;vertical-align:top;padding:.35em .5em .35em 0;"
            + "border-bottom:1px solid #999}.stop{border:4px solid #000;padding:.5em;margin:.6em 0}.stop-word{font-size:1.6em;"
            + "font-weight:bold;margin:0}.caution{border:1px solid #000;padding:.1em .6em;margin:.8em 0;font-size:.9em}.head{font-weight:"
            + "bold}.big{font-size:1.2em;font-weight:bold;margin:.2em 0}svg{max-width:100%;height:auto}";

    private final ReportWords words;
    private final String title;
    private final String label;
    private final List<Message> reasons;
    private final MadeFrom made;
    private final List<Part> parts = new ArrayList<>();

    Paper(ReportWords words, String title, String label, List<Message> reasons, MadeFrom made) {
        this.made = made;
        this.words = words;
        this.title = title;
        this.label = label;
        this.reasons = List.copyOf(reasons);
    }

    Paper add(Part part) {
        parts.add(part);
        return this;
    }

    String title() {
        return title;
    }

    /** Writes the pages of paper; a picture may stand after the first part. */
    String page(PageFrame frame, Consumer<Html> picture) throws ReportException {
        return frame.document(title, "card short", body(picture));
    }

    /** Writes one page for a small screen: it needs nothing from elsewhere and runs nothing. */
    String phone(ReportOptions options) {
        Html html = new Html(words).raw("<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"" + options.language()
                .getLanguage() + "\">\n<head>\n<meta charset=\"UTF-8\" />\n<meta name=\"viewport\" content=\"width=device-width, "
                + "initial-scale=1\" />\n").element("title", title).open("style").raw(PHONE_STYLE).close("style");
        return html.close("head").open("body").raw(body(none -> {
            // a telephone shows the words alone
        })).element("p", words.render(made.words())).close("body").close("html").toString();
    }

    private String body(Consumer<Html> picture) {
        Html html = new Html(words);
        if (!reasons.isEmpty()) {
            html.open("div class=\"locked stop\"").element("p class=\"stop-word\"", words.say("card.not-for-use"))
                    .list(words.render(reasons)).close("div");
        }
        html.element("h1", title).element("p class=\"big\"", label);
        PageFrame.cautions(html);
        for (Part part : parts) {
            html.open("div class=\"keep\"").element("h2 class=\"flow\"", part.title());
            table(html, part);
            part.lines().forEach(line -> html.element("p", line));
            html.close("div");
            if (part == parts.get(0)) {
                picture.accept(html);
            }
        }
        return html.toString();
    }

    private static void table(Html html, Part part) {
        if (part.rows().isEmpty()) {
            return;
        }
        html.open("table class=\"data\"");
        if (!part.heads().isEmpty()) {
            html.open("thead").open("tr");
            part.heads().forEach(head -> html.element("th scope=\"col\"", head));
            html.close("tr").close("thead");
        }
        html.open("tbody");
        part.rows().forEach(html::row);
        html.close("tbody").close("table");
    }

    /** Writes plain text to be copied into a message. */
    String text() {
        StringBuilder text = new StringBuilder();
        if (!reasons.isEmpty()) {
            line(text, words.say("card.not-for-use"));
            words.render(reasons).forEach(reason -> line(text, "- " + reason));
            line(text, "");
        }
        line(text, title);
        line(text, label);
        for (Part part : parts) {
            line(text, "");
            line(text, part.title().toUpperCase(Locale.forLanguageTag(words.language())));
            if (!part.heads().isEmpty() && !part.rows().isEmpty()) {
                line(text, String.join(" | ", part.heads()));
            }
            part.rows().forEach(row -> line(text, String.join(part.heads().isEmpty() ? ": " : " | ", row)));
            part.lines().forEach(said -> line(text, said));
        }
        line(text, "");
        Cautions.messages().forEach(caution -> line(text, words.render(caution)));
        line(text, words.render(made.words()));
        return text.toString();
    }

    /** What a name of a file holds neither ends a line nor steers a terminal. */
    private static void line(StringBuilder text, String line) {
        text.append(Printable.of(line).stripTrailing())
                .append('\n');
    }
}
