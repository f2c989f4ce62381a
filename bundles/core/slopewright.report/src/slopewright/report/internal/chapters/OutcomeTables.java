package slopewright.report.internal.chapters;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

import slopewright.checks.Outcome;
import slopewright.checks.Severity;
import slopewright.checks.Verdict;
import slopewright.messages.Words;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;

/** Prints outcomes. */
final class OutcomeTables {

    private static final int MOST_ELEMENTS = 12;

    private final Html html;
    private final Project project;
    private final ReportWords words;

    OutcomeTables(Html html, Project project) {
        this.html = html;
        this.project = project;
        words = html.words();
    }

    private String path(Outcome outcome) {
        return Ids.find(project, outcome.elementId()).map(words::path).orElse(words.write(outcome.elementPath()));
    }

    /**
     * Prints every outcome of an annex: of each design rule what is met in a line, of the rules about data how often, and what does not
     * concern anything at the end. What is not met or to clear up stands in the chapter of results and is repeated here.
     */
    void matrix(List<Outcome> outcomes, Function<Outcome, String> names) {
        Map<String, List<Outcome>> rules = outcomes.stream().collect(Collectors.groupingBy(Outcome::rule, LinkedHashMap::new,
                Collectors.toList()));
        html.remark("matrix-intro").section("design-rules").table("outcomes", List.of(25, 13, 28, 34), "rule", "value-and-limit",
                "elements", "source-provenance");
        rules.values().stream().filter(of -> !of.get(0).isAboutData()).forEach(of -> design(of, names));
        html.endTable().section("data-rules").table("outcomes", List.of(34, 16, 34, 16), "rule", "met", "rule", "met");
        List<List<Outcome>> data = rules.values().stream().filter(of -> of.get(0).isAboutData()).toList();
        data.forEach(of -> open(of).forEach(this::finding));
        List<List<String>> sound = data.stream().map(OutcomeTables::met).filter(of -> !of.isEmpty())
                .map(of -> List.of(name(of.get(0)), sound(of))).toList();
        int half = (sound.size() + 1) / 2;
        for (int i = 0; i < half; i++) {
            List<String> cells = new ArrayList<>(sound.get(i));
            cells.addAll(i + half < sound.size() ? sound.get(i + half) : List.of("", ""));
            html.styledRow("pass", cells);
        }
        html.endTable();
        List<String> idle = new ArrayList<>();
        rules.forEach((rule, of) -> {
            long count = of.stream().filter(outcome -> outcome.verdict() == Verdict.NOT_APPLICABLE).count();
            if (count > 0) {
                idle.add(words.say("matrix-counted", Words.name(rule), Words.count(count)));
            }
        });
        if (!idle.isEmpty()) {
            html.remark("matrix-not-applicable", Words.names(idle));
        }
    }

    /** How many entries are sound, with the least margin of those that have one. */
    private String sound(List<Outcome> met) {
        return met.stream().filter(outcome -> outcome.margin().isPresent()).min(Comparator.comparingDouble(outcome -> outcome.margin()
                .getAsDouble())).map(least -> words.say("data-met", Words.count(met.size()), Words.name(words.margin(least))))
                .orElse(String.valueOf(met.size()));
    }

    private String name(Outcome outcome) {
        return words.say("rule-and-title", Words.name(outcome.rule()), outcome.title());
    }

    private static List<Outcome> open(List<Outcome> outcomes) {
        return outcomes.stream().filter(outcome -> outcome.verdict() == Verdict.NOT_MET || outcome.verdict() == Verdict.TO_CLEAR_UP)
                .toList();
    }

    private static List<Outcome> met(List<Outcome> outcomes) {
        return outcomes.stream().filter(outcome -> outcome.verdict() == Verdict.MET).toList();
    }

    private void design(List<Outcome> of, Function<Outcome, String> names) {
        open(of).forEach(this::finding);
        List<Outcome> met = met(of);
        if (!met.isEmpty()) {
            met(met, names);
        }
    }

    private void finding(Outcome outcome) {
        html.open("tr class=\"" + style(outcome) + "\"").element("td", name(outcome)).element("td colspan=\"3\"", path(outcome)
                + ": " + words.verdict(outcome) + ".").close("tr");
    }

    /** One line: each element with its margin, the least first. */
    private void met(List<Outcome> met, Function<Outcome, String> names) {
        List<Outcome> sorted = met.stream().sorted(Comparator.comparingDouble(outcome -> outcome.margin().orElse(Double.MAX_VALUE)))
                .toList();
        Outcome first = sorted.get(0);
        List<String> elements = new ArrayList<>(sorted.stream().limit(MOST_ELEMENTS).map(outcome -> (names.apply(outcome) + " "
                + words.margin(outcome)).strip()).toList());
        if (sorted.size() > MOST_ELEMENTS) {
            elements.add(words.say("matrix-more", Words.count(sorted.size() - MOST_ELEMENTS)));
        }
        html.styledRow("pass", List.of(name(first), measured(first), words.say("matrix-met", Words.count(sorted.size()),
                Words.name(String.join("; ", elements))), sorted.stream().flatMap(outcome -> outcome.citation().stream())
                        .map(words::briefSource).distinct().collect(Collectors.joining("; "))));
    }

    private String measured(Outcome outcome) {
        return outcome.measure().isEmpty() ? "" : words.say("matrix-value", Words.name(words.value(outcome)),
                Words.name(words.limit(outcome)));
    }

    /** Prints findings, those that are not met first, each with the source of its limit. */
    void findings(List<Outcome> findings) {
        html.table("fine", List.of(20, 14, 18, 48), "rule", "element", "verdict-value-limit", "compared");
        findings.forEach(outcome -> html.styledRow(style(outcome), List.of(name(outcome), path(outcome),
                judged(outcome), explained(outcome))));
        html.endTable();
    }

    /** Prints the findings about one indicator; what a rule says alike of several parts stands in one row, each with its number. */
    void aidFindings(List<Outcome> findings) {
        html.table("fine", List.of(22, 20, 58), "rule", "verdict-value-limit", "compared");
        Map<List<String>, List<Outcome>> alike = new LinkedHashMap<>();
        findings.forEach(outcome -> alike.computeIfAbsent(List.of(outcome.rule(), words.verdict(outcome), style(outcome), outcome.citation()
                .map(words::source).orElse("")), any -> new ArrayList<>()).add(outcome));
        alike.values().forEach(of -> html.styledRow(style(of.get(0)), List.of(name(of.get(0)), judged(of), explained(of))));
        html.endTable();
    }

    private String judged(List<Outcome> alike) {
        String measured = alike.stream().map(this::measured).filter(text -> !text.isEmpty()).distinct().collect(Collectors.joining("; "));
        return words.verdict(alike.get(0)) + (measured.isEmpty() ? "" : ". " + measured);
    }

    private String explained(List<Outcome> alike) {
        String source = alike.get(0).citation().map(words::source).map(text -> " (" + text + ")").orElse("");
        return alike.stream().map(words::explanation).distinct().collect(Collectors.joining(" ")) + source;
    }

    private String judged(Outcome outcome) {
        String measured = measured(outcome);
        return words.verdict(outcome) + (measured.isEmpty() ? "" : ". " + measured);
    }

    private String explained(Outcome outcome) {
        return words.explanation(outcome) + outcome.citation().map(source -> " (" + words.source(source) + ")").orElse("");
    }

    private static String style(Outcome outcome) {
        return outcome.weight().map(Severity::key).orElse(outcome.verdict() == Verdict.MET ? "pass" : "quiet");
    }
}
