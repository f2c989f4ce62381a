package slopewright.report.internal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

import slopewright.model.Aerodrome;
import slopewright.model.Project;
import slopewright.report.Cautions;
import slopewright.report.ReportOptions;

/** What is around every document: head, style, running lines, numbered chapters with bookmarks and contents. */
final class Shell {

    private final List<String> chapters = new ArrayList<>();
    private final Project project;
    private final ReportOptions options;

    Shell(Project project, ReportOptions options) {
        this.project = project;
        this.options = options;
    }

    /** Returns the name of a project for people. */
    static String name(Project project) {
        return project.getName() == null ? "Unnamed project" : project.getName();
    }

    /** Opens a numbered chapter. */
    void chapter(Html html, String title) {
        chapters.add(title);
        html.element("h2 id=\"" + id(chapters.size()) + "\"", chapters.size() + "  " + title);
    }

    private static String id(int number) {
        return "chapter-" + number;
    }

    /** Returns the table of contents of the chapters so far. */
    String contents() {
        Html html = new Html().open("div class=\"contents\"").element("p class=\"head\"", "Contents");
        for (int i = 1; i <= chapters.size(); i++) {
            html.open("p").element("a href=\"#" + id(i) + "\"", i + "  " + chapters.get(i - 1)).close("p");
        }
        return html.close("div").toString();
    }

    /** Adds the box with the cautions. */
    static void cautions(Html html) {
        html.open("div class=\"caution\"").element("p class=\"head\"", "Caution");
        Cautions.TEXT.forEach(text -> html.element("p", text));
        html.close("div");
    }

    /** Returns the whole document. */
    String document(String title, String bodyClass, String body) {
        Html html = new Html();
        html.raw("<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\">\n<head>\n<meta charset=\"UTF-8\" />\n");
        html.element("title", title).raw("<meta name=\"subject\" content=\"" + Html.escaped("Visual approach slope indicators")
                + "\" />\n");
        html.raw("<meta name=\"description\" content=\"" + Html.escaped(title) + "\" />\n");
        html.open("style").raw(style()).close("style");
        html.open("bookmarks");
        for (int i = 1; i <= chapters.size(); i++) {
            html.raw("<bookmark name=\"" + Html.escaped(chapters.get(i - 1)) + "\" href=\"#" + id(i) + "\"></bookmark>\n");
        }
        html.close("bookmarks").close("head").open("body class=\"" + bodyClass + "\"");
        Aerodrome aerodrome = project.getAerodrome();
        String place = aerodrome == null || aerodrome.getIdentifier() == null ? "" : aerodrome.getIdentifier() + "  \u00b7  ";
        html.element("div class=\"running\"", place + title + "  \u00b7  revision " + Numbers.orUnknown(project.getRevision())
                + "  \u00b7  "
                + options.date());
        return html.raw(body).close("body").close("html").toString();
    }

    private String style() {
        try (InputStream in = Shell.class.getResourceAsStream("report.css")) {
            return "\n" + new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("size: A4", "size: " + options.paper().key())
                    .replace("width: 267mm", "width: " + options.paper().wideMm() + "mm");
        } catch (IOException e) {
            throw new IllegalStateException("the style of documents can not be read", e);
        }
    }
}
