package slopewright.ui.review.internal;

import java.util.Comparator;
import java.util.OptionalDouble;
import java.util.function.Function;

import slopewright.checks.Outcome;
import slopewright.checks.Severity;
import slopewright.standards.Citation;
import slopewright.ui.properties.OutcomeTexts;

/** The columns of the findings table. */
public enum OutcomeColumn {

    /** Id and name of the rule, behind the image of its weight. */
    RULE("Rule", 215, false, outcome -> outcome.rule() + "  " + outcome.title(),
            Comparator.comparing(OutcomeColumn::weight).reversed().thenComparing(Outcome::rule)),
    /** Where the element stands. */
    ELEMENT("Element", 165, false, Outcome::elementPath, Comparator.comparing(Outcome::elementPath)),
    /** How it came out. */
    VERDICT("Verdict", 85, false, OutcomeTexts::verdict, Comparator.comparing(Outcome::verdict)),
    /** The measured value. */
    VALUE("Value", 60, true, outcome -> OutcomeTexts.number(outcome.value(), outcome.unit()), numbers(Outcome::value)),
    /** The limit that decides. */
    LIMIT("Limit", 60, true, outcome -> OutcomeTexts.number(outcome.limit(), outcome.unit()), numbers(Outcome::limit)),
    /** How far the value is on the good side. */
    MARGIN("Margin", 62, true, outcome -> OutcomeTexts.number(outcome.margin(), outcome.unit()), numbers(Outcome::margin)),
    /** The unit of the three. */
    UNIT("Unit", 55, false, outcome -> OutcomeTexts.unit(outcome.unit()), Comparator.comparing(Outcome::unit)),
    /** Where the limit stands. */
    CLAUSE("Clause", 200, false, outcome -> outcome.citation().map(Citation::text).orElse(""), Comparator.comparing(OutcomeColumn::clause)),
    /** How well the limit is known. */
    PROVENANCE("Known from", 140, false, OutcomeColumn::provenance, Comparator.comparing(OutcomeColumn::provenance));

    private final String title;
    private final int width;
    private final boolean right;
    private final Function<Outcome, String> text;
    private final Comparator<Outcome> order;

    OutcomeColumn(String title, int width, boolean right, Function<Outcome, String> text, Comparator<Outcome> order) {
        this.title = title;
        this.width = width;
        this.right = right;
        this.text = text;
        this.order = order;
    }

    /** Returns its heading. */
    public String title() {
        return title;
    }

    /** Returns its usual width in pixels. */
    public int width() {
        return width;
    }

    /** Returns whether it holds numbers. */
    public boolean isRight() {
        return right;
    }

    /** Returns what it shows of an outcome. */
    public String text(Outcome outcome) {
        return text.apply(outcome);
    }

    /** Returns its order, the weightiest or least first. */
    public Comparator<Outcome> order() {
        return order;
    }

    private static int weight(Outcome outcome) {
        return outcome.weight().map(Severity::ordinal).map(ordinal -> ordinal + 1).orElse(0);
    }

    private static String clause(Outcome outcome) {
        return outcome.citation().map(Citation::text).orElse("");
    }

    private static String provenance(Outcome outcome) {
        return outcome.citation().map(citation -> citation.provenance().key()).orElse("") + (outcome.toConfirm() ? ", to confirm" : "");
    }

    private static Comparator<Outcome> numbers(Function<Outcome, OptionalDouble> number) {
        return Comparator.comparingDouble(outcome -> number.apply(outcome).orElse(Double.POSITIVE_INFINITY));
    }
}
