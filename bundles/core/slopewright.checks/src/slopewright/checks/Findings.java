package slopewright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.model.Identified;
import slopewright.model.util.Projects;
import slopewright.standards.Citation;
import slopewright.standards.Provenance;

/** Collects the outcomes of one rule. */
public final class Findings {

    /**
     * A number against its limit.
     *
     * @param value  the measured value
     * @param limit  the limit that decides
     * @param margin how far the value is on the good side; negative on the bad side
     * @param unit   unit of all three
     */
    public record Measure(double value, double limit, double margin, String unit) {

        /** Makes a measure of which less is better. */
        public static Measure atMost(double value, double limit, String unit) {
            return new Measure(value, limit, limit - value, unit);
        }

        /** Makes a measure of which more is better. */
        public static Measure atLeast(double value, double limit, String unit) {
            return new Measure(value, limit, value - limit, unit);
        }

        /** Makes a measure that must lie around a wanted value: its deviation against the tolerance. */
        public static Measure within(double value, double wanted, double tolerance, String unit) {
            return atMost(Math.abs(value - wanted), tolerance, unit);
        }

        /** Returns whether the value is on the good side, a rounding of a millionth allowed. */
        public boolean isMet() {
            return margin >= -1e-6;
        }
    }

    private final Rule rule;
    private final List<Outcome> outcomes = new ArrayList<>();

    /** Starts the collection for a rule. */
    public Findings(Rule rule) {
        this.rule = rule;
    }

    /**
     * Adds the comparison of a number with its limit.
     *
     * @param element     the element that is measured
     * @param measure     the numbers
     * @param citation    where the limit comes from; what is known worse than published makes the outcome one to confirm
     * @param explanation what was compared, and what to do where it failed
     */
    public void compare(Identified element, Measure measure, Citation citation, String explanation) {
        compare(element, measure, citation, explanation, rule.severity());
    }

    /** Adds a comparison with its own weight. */
    public void compare(Identified element, Measure measure, Citation citation, String explanation, Severity severity) {
        compare(element, measure, Optional.of(citation), explanation, severity);
    }

    /** Adds a comparison whose limit may come from the data of the site or of the equipment instead of a rule set. */
    public void compare(Identified element, Measure measure, Optional<Citation> citation, String explanation, Severity severity) {
        compare(element, measure, citation, citation.filter(Citation::toConfirm).isPresent(), explanation, severity);
    }

    /**
     * Adds a comparison whose measured value itself rests on values that may need confirmation.
     *
     * @param element     the element that is measured
     * @param measure     the numbers
     * @param citation    where the limit comes from
     * @param toConfirm   whether a value that nobody confirmed decided it, in the limit or in what was measured
     * @param explanation what was compared, and what to do where it failed
     * @param severity    weight of a failure
     */
    public void compare(Identified element, Measure measure, Optional<Citation> citation, boolean toConfirm, String explanation,
            Severity severity) {
        outcomes.add(new Outcome(rule.id(), rule.title(), element.getId(), Projects.path(element),
                measure.isMet() ? Verdict.PASS : Verdict.FAIL, severity, OptionalDouble.of(measure.value()),
                OptionalDouble.of(measure.limit()), OptionalDouble.of(measure.margin()), measure.unit(), List.of(), citation,
                toConfirm, explanation));
    }

    /** Adds a verdict without a number. */
    public void decide(Identified element, boolean met, Citation citation, String explanation) {
        decide(element, met, Optional.of(citation), explanation, rule.severity());
    }

    /** Adds a verdict without a number that rests on the data alone, such as an unknown name. */
    public void decide(Identified element, boolean met, Optional<Citation> citation, String explanation, Severity severity) {
        outcomes.add(new Outcome(rule.id(), rule.title(), element.getId(), Projects.path(element),
                met ? Verdict.PASS : Verdict.FAIL, severity,
                OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), "", List.of(), citation,
                citation.filter(Citation::toConfirm).isPresent(), explanation));
    }

    /** Adds that something is missing, so that nobody knows. */
    public void notEvaluated(Identified element, List<String> missing, String explanation) {
        outcomes.add(new Outcome(rule.id(), rule.title(), element.getId(), Projects.path(element), Verdict.NOT_EVALUATED, rule.severity(),
                OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), "", missing, Optional.empty(), false, explanation));
    }

    /** Adds that the rule has nothing to say about an element. */
    public void notApplicable(Identified element, String explanation) {
        outcomes.add(new Outcome(rule.id(), rule.title(), element.getId(), Projects.path(element), Verdict.NOT_APPLICABLE, rule.severity(),
                OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), "", List.of(), Optional.empty(), false,
                explanation));
    }

    /** Adds outcomes of the same rule that were found before. */
    public void addAll(List<Outcome> found) {
        outcomes.addAll(found);
    }

    /** Returns the outcomes in the order in which they were added. */
    public List<Outcome> outcomes() {
        return List.copyOf(outcomes);
    }

    /** Returns the weakest of some provenances as the citation to show: the one that is known worst. */
    public static Citation weakest(List<Citation> citations) {
        Citation worst = citations.get(0);
        for (Citation other : citations) {
            Provenance known = other.provenance();
            boolean openWhereWorstIsNot = other.toConfirm() && !worst.toConfirm();
            if (openWhereWorstIsNot || other.toConfirm() == worst.toConfirm() && known.compareTo(worst.provenance()) > 0) {
                worst = other;
            }
        }
        return worst;
    }
}
