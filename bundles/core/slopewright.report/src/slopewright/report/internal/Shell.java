package slopewright.report.internal;

import java.util.List;
import java.util.Map;

import slopewright.model.Project;
import slopewright.report.Cautions;
import slopewright.report.ReportException;
import slopewright.report.ReportOptions;

/** What is around every document: head, style, running lines, bookmarks and contents. */
final class Shell {

    private final Project project;
    private final ReportOptions options;
    private final String ruleSet;

    Shell(Project project, ReportOptions options, String ruleSet) {
        this.project = project;
        this.options = options;
        this.ruleSet = ruleSet;
    }

    /** Returns the name of a project for people. */
    static String name(Project project) {
        return project.getName() == null ? "Unnamed project" : project.getName();
    }

    /** Returns the table of contents. */
    static String contents(List<Html.Heading> headings) {
        Html html = new Html().open("div class=\"contents\"").element("p class=\"title\"", "Contents");
        headings.forEach(heading -> html.open(heading.isChapter() ? "p" : "p class=\"sub\"")
                .element("a href=\"#" + heading.id() + "\"", heading.toString()).close("p"));
        return html.close("div").toString();
    }

    /** Adds the box with the cautions. */
    static void cautions(Html html) {
        html.open("div class=\"caution\"").element("p class=\"head\"", "Caution");
        Cautions.TEXT.forEach(text -> html.element("p", text));
        html.close("div");
    }

    /** Returns the whole document of one sheet. */
    String document(String title, String bodyClass, String body) throws ReportException {
        return document(title, bodyClass, List.of(), body);
    }

    /** Returns the whole document. */
    String document(String title, String bodyClass, List<Html.Heading> headings, String body) throws ReportException {
        Html html = new Html();
        html.raw("<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\">\n<head>\n<meta charset=\"UTF-8\" />\n");
        html.element("title", title).raw("<meta name=\"subject\" content=\"" + Html.escaped("Visual approach slope indicators")
                + "\" />\n");
        html.raw("<meta name=\"description\" content=\"" + Html.escaped(title) + "\" />\n");
        html.open("style").raw(style()).close("style");
        bookmarks(html, headings);
        html.close("head").open("body class=\"" + bodyClass + "\"");
        Map<String, String> words = ProjectWords.of(project, title, ruleSet, options.date());
        html.open("div class=\"running\"").raw(TemplateFragment.expand("running.html", TemplateFiles.text(options.template(),
                "running.html").strip(), new TemplateSlots(words, Map.of(), options.template()))).close("div");
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
        return "\n" + TemplateFiles.style(options.template()).replace("size: A4", "size: " + options.paper().key())
                .replace("width: 267mm", "width: " + options.paper().wideMm() + "mm");
    }
}
