package slopewright.ui.review.internal;

import slopewright.checks.Outcome;
import slopewright.checks.RuleCatalogue;
import slopewright.standards.Citation;
import slopewright.ui.properties.OutcomeTexts;

/** One outcome in full sentences: what was compared, with which numbers, by which clause, and what is open. */
public final class OutcomeExplanation {

    private OutcomeExplanation() {
    }

    /** Returns where the element stands, how it came out, and what to do. */
    public static String brief(Outcome outcome) {
        return outcome.elementPath() + ": " + OutcomeTexts.verdict(outcome) + (outcome.toConfirm() ? ", to be confirmed" : "") + ". "
                + outcome.explanation();
    }

    /** Returns numbers, source and rule, one statement a paragraph. */
    public static String rest(Outcome outcome) {
        StringBuilder text = new StringBuilder();
        if (outcome.value().isPresent()) {
            add(text, "Value " + number(outcome, outcome.value()) + ", limit " + number(outcome, outcome.limit()) + ", margin "
                    + number(outcome, outcome.margin()) + ".");
        }
        if (!outcome.missing().isEmpty()) {
            add(text, "Missing: " + String.join(", ", outcome.missing()) + ".");
        }
        outcome.citation().ifPresent(citation -> add(text, citation(citation)));
        RuleCatalogue.find(outcome.rule()).ifPresent(rule -> add(text, "The rule: " + rule.description()));
        return text.toString();
    }

    private static String citation(Citation citation) {
        StringBuilder text = new StringBuilder("Source: " + citation.text() + " (" + citation.provenance().key() + ").");
        if (!citation.note().isEmpty()) {
            text.append(' ').append(citation.note());
        }
        if (!citation.confirmation().isEmpty()) {
            text.append(" Confirmed: ").append(citation.confirmation()).append('.');
        } else if (citation.toConfirm()) {
            text.append(" Nobody has confirmed this value in the issued document yet; do so before submission.");
        }
        return text.toString();
    }

    private static String number(Outcome outcome, java.util.OptionalDouble value) {
        return (OutcomeTexts.number(value, outcome.unit()) + " " + OutcomeTexts.unit(outcome.unit())).strip();
    }

    private static void add(StringBuilder text, String paragraph) {
        if (!text.isEmpty()) {
            text.append("\n");
        }
        text.append(paragraph);
    }
}
