package slopewright.report.internal.template;

import java.util.List;
import java.util.Map;

import slopewright.evaluation.MadeFrom;
import slopewright.messages.Printable;
import slopewright.messages.Words;
import slopewright.model.Project;
import slopewright.report.Cautions;
import slopewright.report.ReportException;
import slopewright.report.ReportOptions;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;
import slopewright.standards.RuleSet;

/** What is around every document: head, style, running lines, bookmarks and contents. */
public final class PageFrame {

    private final Project project;
    private final ReportOptions options;
    private final ReportWords words;
    private final String ruleSet;
    private final MadeFrom made;
    private final String paper;

    /**
     * Makes the frame of a document.
     *
     * @param project the project
     * @param options date, paper, template and language
     * @param rules   the rule set that the document rests on
     */
    public PageFrame(Project project, ReportOptions options, RuleSet rules) {
        this(project, options, rules, options.paper().key());
    }

    /**
     * Makes the frame of a document on a paper of its own.
     *
     * @param project the project
     * @param options date, template and language
     * @param rules   the rule set that the document rests on
     * @param paper   name of the paper in a style sheet
     */
    public PageFrame(Project project, ReportOptions options, RuleSet rules, String paper) {
        this.paper = paper;
        this.project = project;
        this.options = options;
        words = new ReportWords(options.renderer());
        ruleSet = words.ruleSet(rules);
        made = MadeFrom.of(project, rules);
    }

    /** Returns the table of contents: the chapters; their sections are among the bookmarks. */
    public String contents(List<Html.Heading> headings) {
        Html html = new Html(words).open("div class=\"contents\"").element("p class=\"title\"", words.say("contents"));
        headings.stream().filter(Html.Heading::isChapter).forEach(heading -> html.open("p").element("a href=\"#" + heading.id() + "\"",
                heading.toString()).close("p"));
        return html.close("div").toString();
    }

    /** Adds the box with the cautions. */
    public static void cautions(Html html) {
        html.open("div class=\"locked caution\"").element("p class=\"head\"", html.words().say("caution"));
        Cautions.messages().forEach(caution -> html.element("p", html.words().render(caution)));
        html.close("div");
    }

    /** Returns the whole document of one sheet. */
    public String document(String title, String bodyClass, String body) throws ReportException {
        return document(title, bodyClass, List.of(), body);
    }

    /** Returns the whole document. */
    public String document(String title, String bodyClass, List<Html.Heading> headings, String body) throws ReportException {
        Html html = new Html(words);
        html.raw("<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"" + words.language()
                + "\">\n<head>\n<meta charset=\"UTF-8\" />\n");
        html.element("title", title).raw("<meta name=\"subject\" content=\"" + Html.escaped(words.say("subject")) + "\" />\n");
        html.raw("<meta name=\"description\" content=\"" + Html.escaped(title) + "\" />\n");
        html.open("style").raw(style()).close("style");
        bookmarks(html, headings);
        html.close("head").open("body class=\"" + bodyClass + "\"");
        Map<String, String> texts = ProjectWords.of(project, words, title, ruleSet, options.date());
        TemplateFolder files = options.template().files();
        html.open("div class=\"running\"").raw(TemplateFragment.expand("running.html", files.text("running.html").strip(),
                new TemplateSlots(texts, Map.of(), files))).close("div");
        return html.raw(body).close("body").close("html").toString();
    }

    private static void bookmarks(Html html, List<Html.Heading> headings) {
        html.open("bookmarks");
        boolean open = false;
        for (Html.Heading heading : headings) {
            if (heading.isChapter() && open) {
                html.close("bookmark");
            }
            html.open("bookmark name=\"" + Html.escaped(heading.toString()) + "\" href=\"#" + heading.id() + "\"");
            open = true;
            if (!heading.isChapter()) {
                html.close("bookmark");
            }
        }
        if (open) {
            html.close("bookmark");
        }
        html.close("bookmarks");
    }

    private String style() {
        String[] page = words.say("page-of", Words.name("|"), Words.name("|")).split("\\|", -1);
        return "\n" + TemplateFiles.style(options.template().files()).replace("size: A4", "size: " + paper)
                .replace("$(foot)", inStyle(words.say("foot"))).replace("$(made)", inStyle(words.render(made.words())))
                .replace("$(page)", inStyle(page[0])).replace("$(of)", inStyle(page[1]));
    }

    private static String inStyle(String text) {
        return Printable.of(text).replaceAll("[\"\\\\<>&]", "");
    }
}
