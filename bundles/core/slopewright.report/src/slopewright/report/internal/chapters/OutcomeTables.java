package slopewright.report.internal.chapters;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import slopewright.checks.Cure;
import slopewright.checks.Outcome;
import slopewright.checks.Result;
import slopewright.checks.RuleCatalogue;
import slopewright.checks.Severity;
import slopewright.checks.Verdict;
import slopewright.messages.Words;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;

/** Prints outcomes. */
final class OutcomeTables {

    private static final int MOST_ROWS = 2;

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
            Map<Result, List<Outcome>> alike = of.stream().filter(OutcomeTables::isSaidTogether)
                    .collect(Collectors.groupingBy(Outcome::result, LinkedHashMap::new, Collectors.toList()));
            alike.values().removeIf(together -> together.size() <= MOST_ROWS);
            of.stream().filter(outcome -> !isSaidTogether(outcome) || !alike.containsKey(outcome.result())).forEach(this::row);
            alike.values().forEach(this::together);
        });
        html.endTable();
    }

    /** What was entered and is sound, and what a rule has nothing to say about, needs no row for each element. */
    private static boolean isSaidTogether(Outcome outcome) {
        return outcome.verdict() == Verdict.NOT_APPLICABLE || outcome.verdict() == Verdict.MET
                && RuleCatalogue.find(outcome.rule()).filter(rule -> rule.cure() == Cure.ENTRY).isPresent();
    }

    private void row(Outcome outcome) {
        html.styledRow(style(outcome), List.of(outcome.elementPath(), words.verdict(outcome), words.value(outcome), words.limit(outcome),
                words.margin(outcome), words.explanation(outcome), outcome.citation().map(words::source).orElse("")));
    }

    /** Says how many elements came out alike, with the first of them as an example. */
    private void together(List<Outcome> outcomes) {
        Outcome first = outcomes.get(0);
        html.styledRow(style(first), List.of(words.say("matrix-together", Words.count(outcomes.size())), words.verdict(first), "", "", "",
                words.say("matrix-example", Words.name(first.elementPath()), Words.name(words.explanation(first))),
                first.citation().map(words::source).orElse("")));
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
