package slopewright.checks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.model.Identified;
import slopewright.siting.ElementNames;
import slopewright.standards.Citation;
import slopewright.standards.CitedValue;
import slopewright.standards.Provenance;

/** Collects the outcomes of one rule. */
public final class OutcomeCollector {
    /** What nobody confirmed goes before what the project put in the place of a printed value, and that before what is confirmed. */
    private static final Comparator<Citation> WEAKEST_FIRST = Comparator.comparing(Citation::toConfirm)
            .thenComparing(citation -> citation.provenance() == Provenance.OVERRIDE)
            .thenComparing(Citation::provenance).reversed();

    private final Rule rule;
    private final List<Outcome> outcomes = new ArrayList<>();

    /** Starts the collection for a rule. */
    public OutcomeCollector(Rule rule) {
        this.rule = rule;
    }

    /** Starts an outcome about an element; it is added by {@link Entry#add()}. */
    public Entry about(Identified element) {
        return new Entry(element);
    }

    /** One outcome that is being put together. */
    public final class Entry {
        private final Identified element;
        private final List<Citation> citations = new ArrayList<>();
        private final List<Message> steps = new ArrayList<>();
        private Optional<Measure> measure = Optional.empty();
        private Result result;
        private Severity severity = rule.severity();
        private boolean toConfirm;
        private Message message;
        private Optional<Message> action = Optional.empty();

        private Entry(Identified element) {
            this.element = element;
        }

        /** Compares a number with its limit; that decides. */
        public Entry measured(Measure compared) {
            measure = Optional.of(compared);
            result = compared.isMet() ? Result.PASS : Result.FAIL;
            return this;
        }

        /** Gives the verdict, beside a number or without one. */
        public Entry met(boolean isMet) {
            result = isMet ? Result.PASS : Result.FAIL;
            return this;
        }

        /** Names where values that decide come from; one that needs a confirmation makes the outcome one to clear up. */
        public Entry citing(Citation... sources) {
            citations.addAll(Arrays.asList(sources));
            return this;
        }

        /** Names where values that decide come from. */
        public Entry citing(List<Citation> sources) {
            citations.addAll(sources);
            return this;
        }

        /** Names values that decide. */
        public Entry resting(CitedValue... values) {
            Stream.of(values).map(CitedValue::citation).forEach(citations::add);
            return this;
        }

        /** Says how grave it is where it is not met, instead of the severity of the rule. */
        public Entry severity(Severity other) {
            severity = other;
            return this;
        }

        /** Says that a value which nobody confirmed decides, beside those that were named. */
        public Entry toConfirm(boolean is) {
            toConfirm |= is;
            return this;
        }

        /** Says what was compared: a sentence of the catalogue under the id of the rule. */
        public Entry saying(String name, Argument... arguments) {
            return saying(Message.of(rule.id() + "." + name, arguments));
        }

        /** Says what was compared. */
        public Entry saying(Message sentence) {
            message = sentence;
            return this;
        }

        /** Says what to do where it is not met: a sentence of the catalogue under the id of the rule. */
        public Entry advising(String name, Argument... arguments) {
            return advising(Message.of(rule.id() + "." + name, arguments));
        }

        /** Says what to do where it is not met. */
        public Entry advising(Message sentence) {
            action = Optional.of(sentence);
            return this;
        }

        /** Records a step of the computation: a formula of the catalogue with its numbers, the result last. */
        public Entry step(String key, Argument... numbers) {
            steps.add(Message.of("step." + key, numbers));
            return this;
        }

        /** Records steps of the computation. */
        public Entry steps(List<Message> more) {
            steps.addAll(more);
            return this;
        }

        /** Adds the outcome. */
        public void add() {
            List<Citation> weakestFirst = citations.stream().distinct().sorted(WEAKEST_FIRST).toList();
            boolean open = toConfirm || weakestFirst.stream().anyMatch(Citation::toConfirm);
            outcomes.add(new Outcome(rule.id(), element.getId(), ElementNames.way(element), result, severity, measure, List.of(),
                    weakestFirst,
                    open, message, result == Result.FAIL ? action : Optional.empty(), steps));
        }
    }

    /** Adds that something is missing, so that nobody knows. */
    public void notEvaluated(Identified element, List<Message> missing, Message explanation) {
        notEvaluated(element, missing, explanation, List.of());
    }

    /**
     * Adds that an element could not be evaluated because values contradict each other.
     *
     * @param element     the element
     * @param missing     what is missing
     * @param explanation why it could not be evaluated
     * @param between     the values of which one is to be confirmed, so that a book of values lists them
     */
    public void notEvaluated(Identified element, List<Message> missing, Message explanation, List<CitedValue> between) {
        outcomes.add(new Outcome(rule.id(), element.getId(), ElementNames.way(element), Result.NOT_EVALUATED, rule.severity(),
                Optional.empty(), missing, between.stream().map(CitedValue::citation).toList(), false, explanation, Optional.empty(),
                List.of()));
    }

    /** Adds that the rule has nothing to say about an element. */
    public void notApplicable(Identified element, Message explanation) {
        outcomes.add(new Outcome(rule.id(), element.getId(), ElementNames.way(element), Result.NOT_APPLICABLE, rule.severity(),
                Optional.empty(), List.of(), List.of(), false, explanation, Optional.empty(), List.of()));
    }

    /** Adds outcomes of the same rule that were found before. */
    public void addAll(List<Outcome> found) {
        outcomes.addAll(found);
    }

    /** Returns the outcomes in the order in which they were added. */
    public List<Outcome> outcomes() {
        return List.copyOf(outcomes);
    }
}
