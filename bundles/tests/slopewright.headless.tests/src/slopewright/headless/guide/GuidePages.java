package slopewright.headless.guide;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

import picocli.CommandLine;
import slopewright.checks.Rule;
import slopewright.checks.RuleCatalogue;
import slopewright.checks.Stages;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Words;
import slopewright.siting.ValueNames;
import slopewright.standards.Citation;
import slopewright.standards.CitedChoice;
import slopewright.standards.CitedValue;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** Makes the pages of the guide in one language: tasks and views from its own words, the reference from the catalogues of the product. */
final class GuidePages {
    private static final List<String> PAGES = List.of("tasks", "window", "rules", "values", "commands", "files");
    private static final String STYLE = "body{font:16px/1.45 sans-serif;max-width:62em;margin:1em auto;padding:0 1em;color:#111;"
            + "background:#fff}table{border-collapse:collapse}td,th{border:1px solid #999;padding:.2em .5em;text-align:left;"
            + "vertical-align:top}nav a{margin-right:1em}img{max-width:100%;background:#fff}:target{background:#ffef9e}"
            + "@media(prefers-color-scheme:dark){body{color:#eee;background:#1e1e1e}a{color:#8ab4f8}:target{background:#5a4a00}}";

    private final MessageRenderer language;
    private final Properties words = new Properties();

    GuidePages(Locale language) {
        this.language = MessageRenderer.of(language);
        String file = language.equals(Locale.GERMAN) ? "words_de.properties" : "words.properties";
        try (Reader reader = new InputStreamReader(GuidePages.class.getResourceAsStream(file), StandardCharsets.UTF_8)) {
            words.load(reader);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns the keys of the words that are said in both languages. */
    static TreeSet<String> keys(Locale language) {
        TreeSet<String> keys = new TreeSet<>(new GuidePages(language).words.stringPropertyNames());
        keys.removeIf(key -> key.startsWith("command."));
        return keys;
    }

    /** Returns the pages by their file names. */
    Map<String, String> make(CommandLine commands) {
        Map<String, String> pages = new LinkedHashMap<>();
        StringBuilder index = new StringBuilder("<ul>\n");
        PAGES.forEach(page -> index.append("<li><a href=\"" + page + ".html\">" + say(page) + "</a></li>\n"));
        pages.put("index.html", page("title", index.append("</ul>\n").toString()));
        pages.put("tasks.html", page("tasks", tasks()));
        pages.put("window.html", page("window", window()));
        pages.put("rules.html", page("rules", rules()));
        pages.put("values.html", page("values", values()));
        pages.put("commands.html", page("commands", commands(commands)));
        pages.put("files.html", page("files", files()));
        return pages;
    }

    private String say(String key) {
        String text = words.getProperty(key);
        if (text == null) {
            throw new AssertionError("the guide says nothing about " + key);
        }
        return escaped(text);
    }

    private String page(String title, String body) {
        String code = language.language().getLanguage();
        StringBuilder navigation = new StringBuilder("<nav><a href=\"index.html\">" + say("contents") + "</a>");
        PAGES.forEach(page -> navigation.append("<a href=\"" + page + ".html\">" + say(page) + "</a>"));
        String about = words.containsKey(title + ".about") ? "<p>" + say(title + ".about") + "</p>\n" : "";
        return "<!DOCTYPE html>\n<html lang=\"" + code + "\">\n<head><meta charset=\"utf-8\"><title>" + say(title) + "</title><style>"
                + STYLE
                + "</style></head>\n<body>\n" + navigation + "</nav>\n<h1>" + say(title) + "</h1>\n" + about + body + "</body>\n</html>\n";
    }

    private String tasks() {
        StringBuilder html = new StringBuilder();
        Stream.of(words.getProperty("tasks.order").split(",")).forEach(task -> {
            html.append("<h2 id=\"" + task + "\">" + say("task." + task) + "</h2>\n<ol>\n");
            Stream.of(words.getProperty("task." + task + ".steps").split("\\|")).forEach(step -> html.append("<li>" + escaped(step)
                    + "</li>\n"));
            html.append("</ol>\n");
            Optional.ofNullable(words.getProperty("task." + task + ".picture")).ifPresent(picture -> html.append(figure("../pictures/"
                    + language.language().getLanguage() + "/" + picture, "task.picture." + picture)));
        });
        for (String picture : List.of("plan", "section", "pilot")) {
            html.append(figure("../pictures/" + picture, "picture." + picture));
        }
        return html.toString();
    }

    private String figure(String picture, String key) {
        return "<figure><img src=\"" + picture + ".png\" alt=\"" + say(key) + "\"><figcaption>" + say(key) + "</figcaption></figure>\n";
    }

    private String window() {
        StringBuilder html = new StringBuilder();
        entries("window.", ".text").forEach(view -> html.append("<h2 id=\"" + view + "\">" + say("window." + view) + "</h2>\n<p>"
                + say("window." + view + ".text") + "</p>\n"));
        return html.toString();
    }

    /** Returns what stands between a beginning and an end of keys, in the order of what is said of it. */
    private List<String> entries(String before, String after) {
        return words.stringPropertyNames().stream().filter(key -> key.startsWith(before) && key.endsWith(after)
                && words.containsKey(key.substring(0, key.length() - after.length())))
                .map(key -> key.substring(before.length(), key.length() - after.length())).sorted().toList();
    }

    private String rules() {
        StringBuilder html = new StringBuilder(head("rule", "what", "severity", "stage"));
        for (Rule rule : RuleCatalogue.all()) {
            html.append("<tr id=\"" + rule.id() + "\">" + cell(rule.id()) + "<td><b>" + escaped(language.render(rule.title())) + "</b><br>"
                    + escaped(language.render(rule.description())) + "</td>" + cell(language.write(Words.term("severity." + rule.severity()
                            .key()))) + cell(language.write(Stages.term(rule.stage()))) + "</tr>\n");
        }
        return html.append("</table>\n").toString();
    }

    private String values() {
        Map<String, List<String>> rows = new TreeMap<>();
        for (RuleSet rules : RuleSets.all()) {
            rules.values().forEach(value -> row(rows, rules, value));
            rules.choices().forEach(choice -> row(rows, rules, choice));
            rules.tableCitations().forEach(table -> rows.computeIfAbsent(table.key(), any -> new ArrayList<>())
                    .add(row(rules, "", table)));
        }
        StringBuilder html = new StringBuilder();
        rows.forEach((key, lines) -> html.append("<h2 id=\"" + key + "\">" + escaped(language.render(Message.of("plain",
                ValueNames.of(key)))) + "</h2>\n<p><code>" + key + "</code></p>\n" + head("rule-set", "number", "source", "known")
                + String.join("", lines) + "</table>\n"));
        return html.toString();
    }

    private void row(Map<String, List<String>> rows, RuleSet rules, CitedValue value) {
        rows.computeIfAbsent(value.key(), any -> new ArrayList<>()).add(row(rules, language.write(ValueNames.number(value.key(),
                value.printed(), value.printedUnit())), value.citation()));
    }

    private void row(Map<String, List<String>> rows, RuleSet rules, CitedChoice choice) {
        rows.computeIfAbsent(choice.key(), any -> new ArrayList<>()).add(row(rules, language.write(ValueNames.number(choice.key(),
                choice.word().place(), choice.word().kind().unit())), choice.citation()));
    }

    private String row(RuleSet rules, String number, Citation citation) {
        String note = citation.note().isBlank() ? "" : "; " + language.write(citation.note());
        return "<tr>" + cell(rules.key() + ":" + rules.edition()) + cell(number) + cell(language.write(citation.text()))
                + cell(language.write(Words.term("provenance." + citation.provenance().key())) + note) + "</tr>\n";
    }

    private String commands(CommandLine all) {
        StringBuilder html = new StringBuilder("<dl>\n");
        all.getSubcommands().forEach((name, command) -> html.append("<dt id=\"" + name + "\"><code>slopewright " + name + "</code></dt><dd>"
                + described(name, command) + "</dd>\n"));
        return html.append("</dl>\n").toString();
    }

    private String described(String name, CommandLine command) {
        return language.language().equals(Locale.GERMAN) ? say("command." + name)
                : escaped(String.join(" ", command.getCommandSpec().usageMessage().description()));
    }

    private String files() {
        StringBuilder html = new StringBuilder(head("ending", "what", "read", "written"));
        entries("file.", ".read").forEach(ending -> html.append("<tr id=\"" + ending + "\">" + cell("." + ending) + cell(Optional
                .ofNullable(words.getProperty("file." + ending)).orElseThrow()) + "<td>" + say(words.getProperty("file." + ending
                        + ".read"))
                + "</td><td>" + say(words.getProperty("file." + ending + ".written")) + "</td></tr>\n"));
        return html.append("</table>\n").toString();
    }

    private String head(String... columns) {
        StringBuilder html = new StringBuilder("<table>\n<tr>");
        Stream.of(columns).forEach(column -> html.append("<th>" + say(column) + "</th>"));
        return html.append("</tr>\n").toString();
    }

    private static String cell(String text) {
        return "<td>" + escaped(text) + "</td>";
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }
}
