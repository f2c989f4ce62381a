package slopewright.report.internal.chapters;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

import slopewright.checks.MeasureText;
import slopewright.checks.Outcome;
import slopewright.checks.Severity;
import slopewright.checks.Verdict;
import slopewright.messages.Words;
import slopewright.model.ApproachAid;
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
     * Prints the numbered documents and every outcome of an annex: of each design rule what is met in a line, of the rules about data
     * how often, and what does not concern anything at the end. What is not met or to clear up stands in the chapter of results and is
     * repeated here.
     */
    void matrix(List<Outcome> outcomes, Documents documents, Function<Outcome, String> names) {
        Map<String, List<Outcome>> rules = outcomes.stream().collect(Collectors.groupingBy(Outcome::rule, LinkedHashMap::new,
                Collectors.toList()));
        html.remark("matrix-intro");
        documents.write(html);
        html.section("design-rules").table("outcomes", List.of(27, 14, 36, 23), "rule", "value-and-limit",
                "elements", "source-provenance");
        rules.values().stream().filter(of -> !of.get(0).isAboutData()).forEach(of -> design(of, documents, names));
        html.endTable().section("data-rules").table("outcomes", List.of(36, 14, 36, 14), "rule", "met-and-margin", "rule",
                "met-and-margin");
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
                .getAsDouble())).map(least -> words.say("data-met", Words.count(met.size()), Words.name(margin(least))))
                .orElse(String.valueOf(met.size()));
    }

    private String margin(Outcome outcome) {
        return words.measured(outcome).map(MeasureText::margin).orElse("");
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

    private void design(List<Outcome> of, Documents documents, Function<Outcome, String> names) {
        open(of).forEach(this::finding);
        List<Outcome> met = met(of);
        if (!met.isEmpty()) {
            met(met, documents, names);
        }
    }

    private void finding(Outcome outcome) {
        html.open("tr class=\"" + style(outcome) + "\"").element("td", name(outcome)).element("td colspan=\"3\"", path(outcome)
                + ": " + words.verdict(outcome) + ".").close("tr");
    }

    /** One line: each indicator, or what else was judged, with its least margin, and how often where more than once; the least first. */
    private void met(List<Outcome> met, Documents documents, Function<Outcome, String> names) {
        Map<String, List<Outcome>> groups = met.stream().sorted(Comparator.comparingDouble(outcome -> outcome.margin()
                .orElse(Double.MAX_VALUE))).collect(Collectors.groupingBy(names, LinkedHashMap::new, Collectors.toList()));
        List<String> elements = new ArrayList<>();
        groups.entrySet().stream().limit(MOST_ELEMENTS).forEach(group -> elements.add(((group.getValue().size() == 1 ? group.getKey()
                : words.say("matrix-counted", Words.name(group.getKey()), Words.count(group.getValue().size()))) + " "
                + margin(group.getValue().get(0))).strip()));
        if (groups.size() > MOST_ELEMENTS) {
            elements.add(words.say("matrix-more", Words.count(groups.size() - MOST_ELEMENTS)));
        }
        Outcome first = groups.values().iterator().next().get(0);
        html.styledRow("pass", List.of(name(first), words.measured(first).map(text -> words.say("matrix-value-limit", Words.name(text
                .value()), Words.name(text.limit()))).orElse(""), words.say("matrix-met", Words.count(met.size()),
                        Words.name(String.join("; ", elements))), met.stream().flatMap(outcome -> outcome.citation().stream())
                                .map(citation -> documents.brief(citation, words) + " [" + words.provenance(citation) + "]").distinct()
                                .collect(Collectors.joining("; "))));
    }

    private String measured(Outcome outcome) {
        return words.measured(outcome).map(text -> words.say("matrix-value", Words.name(text.value()), Words.name(text.limit())))
                .orElse("");
    }

    /**
     * Prints findings under the indicator that they are about; what a rule says alike of several parts stands in one row, each with its
     * number, and each group with what is not met first.
     */
    void findings(Map<String, List<Outcome>> groups) {
        html.table("fine", List.of(22, 18, 60), "rule", "verdict-value-limit", "compared");
        groups.forEach((group, findings) -> {
            html.open("tr class=\"rule\"").element("td colspan=\"3\"", group).close("tr");
            Map<List<String>, List<Outcome>> alike = new LinkedHashMap<>();
            findings.forEach(outcome -> alike.computeIfAbsent(List.of(outcome.rule(), words.verdict(outcome), style(outcome), outcome
                    .citation().map(words::source).orElse("")), any -> new ArrayList<>()).add(outcome));
            alike.values().forEach(of -> html.styledRow(style(of.get(0)), List.of(name(of.get(0)), judged(of), explained(of))));
        });
        html.endTable();
    }

    /** Prints in short what was found about one indicator: what is not met with its numbers, what is to be cleared up by its rules. */
    void shortFindings(List<Outcome> findings) {
        Map<String, List<Outcome>> broken = findings.stream().filter(outcome -> outcome.verdict() == Verdict.NOT_MET)
                .collect(Collectors.groupingBy(outcome -> name(outcome) + words.verdict(outcome), LinkedHashMap::new, Collectors.toList()));
        if (!broken.isEmpty()) {
            html.table("fine", List.of(42, 18, 40), "rule", "verdict", "value-and-limits");
            broken.values().forEach(of -> html.styledRow(style(of.get(0)), List.of(name(of.get(0)), words.verdict(of.get(0)),
                    measured(of))));
            html.endTable();
        }
        List<String> open = findings.stream().filter(outcome -> outcome.verdict() == Verdict.TO_CLEAR_UP).map(this::name).distinct()
                .toList();
        if (!open.isEmpty()) {
            html.paragraph("to-clear-up-here", Words.count(open.size()), Words.name(String.join("; ", open)));
        }
        html.remark("findings-in-full", Words.name(words.say("section.findings")));
    }

    private String measured(List<Outcome> alike) {
        return alike.stream().map(this::measured).filter(text -> !text.isEmpty()).distinct().collect(Collectors.joining("; "));
    }

    private String judged(List<Outcome> alike) {
        String measured = measured(alike);
        return words.verdict(alike.get(0)) + (measured.isEmpty() ? "" : ". " + measured);
    }

    private String explained(List<Outcome> alike) {
        String source = alike.get(0).citation().map(words::source).map(text -> " (" + text + ")").orElse("");
        return alike.stream().map(this::explained).distinct().collect(Collectors.joining(" ")) + source;
    }

    /** Returns what was compared; with the name of its element in front where that is no indicator and the sentence does not say it. */
    private String explained(Outcome outcome) {
        String sentence = words.explanation(outcome);
        return Ids.find(project, outcome.elementId()).filter(element -> !(element instanceof ApproachAid)).map(words::name)
                .filter(name -> !sentence.contains(name)).map(name -> words.say("said-of", Words.name(name), Words.name(sentence)))
                .orElse(sentence);
    }

    private static String style(Outcome outcome) {
        return outcome.weight().map(Severity::key).orElse(outcome.verdict() == Verdict.MET ? "pass" : "quiet");
    }
}
