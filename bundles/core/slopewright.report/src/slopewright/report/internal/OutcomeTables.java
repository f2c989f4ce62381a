package slopewright.report.internal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

import slopewright.checks.Outcome;
import slopewright.checks.Severity;
import slopewright.checks.Verdict;
import slopewright.messages.Message;
import slopewright.standards.Citation;
import slopewright.standards.RuleSet;

/** Prints outcomes. */
final class OutcomeTables {

    private final Html html;

    OutcomeTables(Html html) {
        this.html = html;
    }

    /** Returns a rule set by its honest name. */
    static String ruleSet(RuleSet rules) {
        String title = rules.descriptor().title();
        return title.contains(rules.edition()) ? title : title + " (edition key " + rules.edition() + ")";
    }

    /** Prints every outcome, grouped by rule, on wide pages. */
    void matrix(List<Outcome> outcomes) {
        html.element("p class=\"small\"", "Every rule of the catalogue against every element that it concerns. The margin is how far the "
                + "value lies on the good side of the limit.");
        html.table("outcomes", List.of(14, 9, 7, 7, 7, 28, 28),
                List.of("Element", "Outcome", "Value", "Limit", "Margin", "What was compared", "Source and provenance"));
        Map<String, List<Outcome>> rules = outcomes.stream().collect(Collectors.groupingBy(outcome -> outcome.rule() + "  "
                + outcome.title().english(), LinkedHashMap::new, Collectors.toList()));
        rules.forEach((rule, of) -> {
            html.group("rule").open("tr class=\"rule\"").element("td colspan=\"7\"", rule).close("tr");
            of.forEach(outcome -> html.open("tr class=\"" + style(outcome) + "\"").element("td", outcome.elementPath())
                    .element("td", word(outcome)).element("td", number(outcome.value(), outcome.unit()))
                    .element("td", number(outcome.limit(), outcome.unit())).element("td", number(outcome.margin(), outcome.unit()))
                    .element("td", explanation(outcome)).element("td", outcome.citation().map(OutcomeTables::source).orElse(""))
                    .close("tr"));
        });
        html.endTable();
    }

    /** Prints findings, the weightiest first. */
    void findings(List<Outcome> findings) {
        html.table("fine", List.of(11, 22, 14, 11, 11, 31), List.of("Rule", "Element", "Outcome", "Value", "Limit", "What was compared"));
        findings.forEach(outcome -> html.open("tr class=\"" + style(outcome) + "\"").element("td", outcome.rule())
                .element("td", outcome.elementPath()).element("td", word(outcome)).element("td", number(outcome.value(), outcome.unit()))
                .element("td", number(outcome.limit(), outcome.unit())).element("td", explanation(outcome)).close("tr"));
        html.endTable();
    }

    private static String number(OptionalDouble value, String unit) {
        return value.isEmpty() ? "" : Numbers.plain(value.getAsDouble()) + (unit.isEmpty() ? "" : " " + unit);
    }

    private static String explanation(Outcome outcome) {
        String text = outcome.explanation().english();
        return outcome.missing().isEmpty() ? text : text + " Missing: " + String.join(", ",
                outcome.missing().stream().map(Message::english).toList()) + ".";
    }

    private static String style(Outcome outcome) {
        return outcome.weight().map(Severity::key).orElse(outcome.verdict() == Verdict.MET ? "pass" : "quiet");
    }

    private static String word(Outcome outcome) {
        return switch (outcome.verdict()) {
            case NOT_MET -> "NOT MET (" + outcome.severity().key() + ")";
            case TO_CLEAR_UP -> "to clear up" + (outcome.toConfirm() ? ", to be confirmed" : "");
            case MET -> "met";
            case NOT_APPLICABLE -> "not applicable";
        };
    }

    /** Returns document, clause, provenance and confirmation of a citation. */
    static String source(Citation citation) {
        return citation.text() + " [" + citation.provenance().key() + "]" + (citation.confirmation().isEmpty() ? ""
                : ", confirmed: " + citation.confirmation());
    }
}
