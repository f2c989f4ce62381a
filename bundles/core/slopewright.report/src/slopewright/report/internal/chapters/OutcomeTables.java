package slopewright.report.internal.chapters;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

import slopewright.checks.Cure;
import slopewright.checks.Outcome;
import slopewright.checks.RuleCatalogue;
import slopewright.checks.Severity;
import slopewright.checks.Verdict;
import slopewright.messages.Words;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;

/** Prints outcomes. */
final class OutcomeTables {

    private static final int MOST_ROWS = 2;
    private static final int MOST_ELEMENTS = 12;

    private final Html html;
    private final ReportWords words;

    OutcomeTables(Html html) {
        this.html = html;
        words = html.words();
    }

    /** Prints every outcome: findings with their reasons, what is met in a line a rule, what does not concern anything at the end. */
    void matrix(List<Outcome> outcomes, Function<Outcome, String> names) {
        html.remark("matrix-intro").table("outcomes", List.of(9, 21, 32, 15, 23), "rule", "rule-title", "elements", "value-and-limit",
                "source-provenance");
        Map<String, List<Outcome>> rules = outcomes.stream().collect(Collectors.groupingBy(Outcome::rule, LinkedHashMap::new,
                Collectors.toList()));
        rules.values().forEach(of -> {
            of.stream().filter(outcome -> outcome.verdict() == Verdict.NOT_MET || outcome.verdict() == Verdict.TO_CLEAR_UP)
                    .forEach(this::finding);
            List<Outcome> met = of.stream().filter(outcome -> outcome.verdict() == Verdict.MET).toList();
            if (!met.isEmpty()) {
                met(met, names);
            }
        });
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

    private void finding(Outcome outcome) {
        html.styledRow(style(outcome), List.of(outcome.rule(), words.render(outcome.title()), outcome.elementPath() + ": "
                + words.verdict(outcome) + ". " + words.explanation(outcome), measured(outcome),
                outcome.citation().map(words::source).orElse("")));
    }

    /** One line: each element with its margin, the least first; entries that are sound are counted. */
    private void met(List<Outcome> met, Function<Outcome, String> names) {
        List<Outcome> sorted = met.stream().sorted(Comparator.comparingDouble(outcome -> outcome.margin().orElse(Double.MAX_VALUE)))
                .toList();
        Outcome first = sorted.get(0);
        boolean isEntry = RuleCatalogue.find(first.rule()).filter(rule -> rule.cure() == Cure.ENTRY).isPresent();
        List<String> elements = new ArrayList<>(sorted.stream().limit(MOST_ELEMENTS).map(outcome -> (names.apply(outcome) + " "
                + words.margin(outcome)).strip()).toList());
        if (sorted.size() > MOST_ELEMENTS) {
            elements.add(words.say("matrix-more", Words.count(sorted.size() - MOST_ELEMENTS)));
        }
        String said = isEntry && sorted.size() > MOST_ROWS ? words.say("matrix-sound", Words.count(sorted.size()))
                : words.say("matrix-met", Words.count(sorted.size()), Words.name(String.join("; ", elements)));
        html.styledRow("pass", List.of(first.rule(), words.render(first.title()), said, measured(first), sorted.stream()
                .flatMap(outcome -> outcome.citation().stream()).map(words::briefSource).distinct().collect(Collectors.joining("; "))));
    }

    private String measured(Outcome outcome) {
        return outcome.measure().isEmpty() ? "" : words.say("matrix-value", Words.name(words.value(outcome)),
                Words.name(words.limit(outcome)));
    }

    /** Prints findings, those that are not met first. */
    void findings(List<Outcome> findings) {
        html.table("fine", List.of(11, 22, 14, 11, 11, 31), "rule", "element", "verdict", "value", "limit", "compared");
        findings.forEach(outcome -> html.styledRow(style(outcome), List.of(outcome.rule(), outcome.elementPath(), words.verdict(outcome),
                words.value(outcome), words.limit(outcome), words.explanation(outcome))));
        html.endTable();
    }

    /** Prints the findings about one indicator. */
    void aidFindings(List<Outcome> findings) {
        html.table("fine", List.of(9, 20, 13, 10, 10, 38), "rule", "rule-title", "verdict", "value", "limit", "compared");
        findings.forEach(outcome -> html.styledRow(style(outcome), List.of(outcome.rule(), words.render(outcome.title()),
                words.verdict(outcome), words.value(outcome), words.limit(outcome), words.explanation(outcome))));
        html.endTable();
    }

    private static String style(Outcome outcome) {
        return outcome.weight().map(Severity::key).orElse(outcome.verdict() == Verdict.MET ? "pass" : "quiet");
    }
}
