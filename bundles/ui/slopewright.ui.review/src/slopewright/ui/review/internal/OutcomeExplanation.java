package slopewright.ui.review.internal;

import java.util.ArrayList;
import java.util.List;

import slopewright.checks.Outcome;
import slopewright.checks.RuleCatalogue;
import slopewright.standards.Citation;
import slopewright.ui.MessageTexts;
import slopewright.ui.properties.OutcomeTexts;

/** One outcome in full sentences: what was compared, with which numbers, by which clause, and what is open. */
public final class OutcomeExplanation {

    private OutcomeExplanation() {
    }

    /** Returns where the element stands, how it came out, and what to do. */
    public static String brief(Outcome outcome) {
        String open = outcome.toConfirm() ? ", " + Messages.get("details.toConfirm") : "";
        return MessageTexts.of(outcome.elementPath()) + ": " + OutcomeTexts.verdict(outcome) + open + ". "
                + MessageTexts.of(outcome.explanation());
    }

    /** Returns numbers with their formulas, source and rule, one statement a paragraph. */
    public static String rest(Outcome outcome) {
        List<String> lines = new ArrayList<>();
        if (outcome.value().isPresent()) {
            lines.add(Messages.get("details.numbers", OutcomeTexts.value(outcome), OutcomeTexts.limit(outcome),
                    OutcomeTexts.margin(outcome)));
            lines.addAll(OutcomeTexts.steps(outcome));
        }
        if (!outcome.missing().isEmpty()) {
            lines.add(Messages.get("details.missing", MessageTexts.list(outcome.missing())));
        }
        outcome.citation().ifPresent(citation -> lines.add(citation(citation)));
        RuleCatalogue.find(outcome.rule()).ifPresent(rule -> lines.add(Messages.get("details.rule", MessageTexts.of(rule.description()))));
        return String.join("\n", lines);
    }

    private static String citation(Citation citation) {
        List<String> parts = new ArrayList<>();
        parts.add(Messages.get("details.source", MessageTexts.of(citation.text()), OutcomeTexts.provenance(citation.provenance())));
        if (!citation.note().isBlank()) {
            parts.add(MessageTexts.of(citation.note()));
        }
        if (!citation.confirmation().isEmpty()) {
            parts.add(Messages.get("details.confirmed", citation.confirmation()));
        } else if (citation.toConfirm()) {
            parts.add(Messages.get("details.unconfirmed"));
        }
        return String.join(" ", parts);
    }
}
