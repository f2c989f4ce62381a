package slopewright.report.internal.chapters;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import slopewright.checks.Outcome;
import slopewright.checks.Severity;
import slopewright.checks.Verdict;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;

/** Prints outcomes. */
final class OutcomeTables {

    private final Html html;
    private final ReportWords words;

    OutcomeTables(Html html) {
        this.html = html;
        words = html.words();
    }

    /** Prints every outcome, grouped by rule, on wide pages. */
    void matrix(List<Outcome> outcomes) {
        html.remark("matrix-intro").table("outcomes", List.of(14, 9, 7, 7, 7, 28, 28), "element", "verdict", "value", "limit", "margin",
                "compared", "source-provenance");
        Map<String, List<Outcome>> rules = outcomes.stream().collect(Collectors.groupingBy(outcome -> outcome.rule() + "  "
                + words.render(outcome.title()), LinkedHashMap::new, Collectors.toList()));
        rules.forEach((rule, of) -> {
            html.group("rule").open("tr class=\"rule\"").element("td colspan=\"7\"", rule).close("tr");
            of.forEach(outcome -> html.styledRow(style(outcome), List.of(outcome.elementPath(), words.verdict(outcome),
                    words.value(outcome), words.limit(outcome), words.margin(outcome), words.explanation(outcome),
                    outcome.citation().map(words::source).orElse(""))));
        });
        html.endTable();
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
