package slopewright.ui.review.internal;

import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.checks.Outcome;
import slopewright.checks.Result;
import slopewright.checks.Verdict;
import slopewright.messages.Message;
import slopewright.siting.ValueNames;
import slopewright.standards.Citation;
import slopewright.standards.RuleSet;
import slopewright.ui.MessageTexts;
import slopewright.ui.properties.OutcomeTexts;

/**
 * Under which headings outcomes stand for who works through them: one for what is not met, one for each missing input, one for each value
 * to confirm with its number and source, and at the end what is met and what does not apply.
 */
final class Checklist {

    private Checklist() {
    }

    /** Returns the place of the heading of an outcome among the others. */
    static int rank(Outcome outcome) {
        if (outcome.verdict() == Verdict.NOT_MET) {
            return 0;
        }
        if (outcome.verdict() == Verdict.TO_CLEAR_UP) {
            return outcome.result() == Result.NOT_EVALUATED ? 1 : 2;
        }
        return outcome.verdict() == Verdict.MET ? 3 : 4;
    }

    /**
     * Returns the heading of an outcome.
     *
     * @param outcome the outcome
     * @param rules   the rule set of the project, empty where it is not known
     */
    static String heading(Outcome outcome, Optional<RuleSet> rules) {
        return switch (rank(outcome)) {
            case 0 -> Messages.get("checklist.not-met");
            case 1 -> outcome.missing().stream().findFirst().map(missing -> Messages.get("checklist.missing", MessageTexts.of(missing)))
                    .orElseGet(() -> Messages.get("checklist.not-evaluated"));
            case 2 -> outcome.citations().stream().filter(Citation::toConfirm).findFirst().map(value -> toConfirm(value, rules))
                    .orElseGet(() -> Messages.get("checklist.entered"));
            case 3 -> Messages.get("checklist.met");
            default -> Messages.get("checklist.not-applicable");
        };
    }

    private static String toConfirm(Citation value, Optional<RuleSet> rules) {
        String name = MessageTexts.of(Message.of("plain", ValueNames.of(value.key())));
        OptionalDouble number = rules.map(set -> set.confirmable(value.key())).orElse(OptionalDouble.empty());
        String unit = rules.flatMap(set -> set.unit(value.key())).orElse("");
        String shown = number.isEmpty() ? ""
                : " = " + MessageTexts.of(Message.of("plain", ValueNames.number(value.key(), number.getAsDouble(), unit)));
        return Messages.get("checklist.confirm", name + shown, MessageTexts.of(value.text()), OutcomeTexts.provenance(value.provenance()));
    }
}
