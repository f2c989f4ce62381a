package slopewright.ui.review.internal;

import java.util.Comparator;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;

import slopewright.checks.Outcome;
import slopewright.ui.MessageTexts;
import slopewright.ui.properties.OutcomeTexts;

/** What is said of an outcome, one column each. */
public enum OutcomeColumn {

    /** Id and name of the rule. */
    RULE(false, outcome -> outcome.rule() + "  " + MessageTexts.of(outcome.title()),
            OutcomeTexts.worstFirst().thenComparing(Outcome::rule)),
    /** Where the element stands. */
    ELEMENT(false, OutcomeColumn::element, Comparator.comparing(OutcomeColumn::element)),
    /** How it came out. */
    VERDICT(false, OutcomeTexts::verdict, Comparator.comparing(Outcome::verdict)),
    /** The measured value. */
    VALUE(true, OutcomeTexts::value, numbers(Outcome::value)),
    /** The limit that decides. */
    LIMIT(true, OutcomeTexts::limit, numbers(Outcome::limit)),
    /** How far the value is on the good side. */
    MARGIN(true, OutcomeTexts::margin, numbers(Outcome::margin)),
    /** Where the limit stands. */
    CLAUSE(false, OutcomeColumn::clause, Comparator.comparing(OutcomeColumn::clause)),
    /** How well the limit is known. */
    PROVENANCE(false, OutcomeTexts::provenance, Comparator.comparing(OutcomeTexts::provenance));

    private final boolean right;
    private final Function<Outcome, String> text;
    private final Comparator<Outcome> order;

    OutcomeColumn(boolean right, Function<Outcome, String> text, Comparator<Outcome> order) {
        this.right = right;
        this.text = text;
        this.order = order;
    }

    /** Returns its heading. */
    public String title() {
        return Messages.get("findings.column." + name().toLowerCase(Locale.ROOT));
    }

    /** Returns whether it holds numbers. */
    public boolean isRight() {
        return right;
    }

    /** Returns what it shows of an outcome. */
    public String text(Outcome outcome) {
        return text.apply(outcome);
    }

    /** Returns its order, the worst or least first. */
    public Comparator<Outcome> order() {
        return order;
    }

    private static String element(Outcome outcome) {
        return MessageTexts.of(outcome.elementPath());
    }

    private static String clause(Outcome outcome) {
        return outcome.citation().map(citation -> MessageTexts.of(citation.text())).orElse("");
    }

    private static Comparator<Outcome> numbers(Function<Outcome, OptionalDouble> number) {
        return Comparator.comparingDouble(outcome -> number.apply(outcome).orElse(Double.POSITIVE_INFINITY));
    }
}
