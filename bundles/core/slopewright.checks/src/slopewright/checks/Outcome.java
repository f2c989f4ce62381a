package slopewright.checks;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.model.Stage;
import slopewright.standards.Citation;

/**
 * What one rule says about one element, as data.
 *
 * @param rule        id of the rule
 * @param elementId   id of the element
 * @param elementPath what the element is called, from the runway end or helipad downward
 * @param result      how it came out
 * @param severity    how grave it is where it is not met
 * @param measure     value, limit and margin; empty where the verdict rests on no number
 * @param missing     inputs that are missing
 * @param citations   where the limit and the other values that decided come from, the weakest first
 * @param toConfirm   whether a value that nobody confirmed decided it
 * @param message     what was compared
 * @param action      what to do; empty where there is nothing to do
 * @param steps       how the numbers came about, as the rule worked them out
 */
public record Outcome(String rule, String elementId, Argument elementPath, Result result, Severity severity, Optional<Measure> measure,
        List<Message> missing, List<Citation> citations, boolean toConfirm, Message message, Optional<Message> action,
        List<Message> steps) {

    /** Refuses missing parts. */
    public Outcome {
        Objects.requireNonNull(rule);
        Objects.requireNonNull(result);
        Objects.requireNonNull(severity);
        Objects.requireNonNull(measure);
        Objects.requireNonNull(message);
        Objects.requireNonNull(action);
        missing = List.copyOf(missing);
        citations = List.copyOf(citations);
        steps = List.copyOf(steps);
    }

    /** Returns the verdict: the first word that holds. */
    public Verdict verdict() {
        return switch (result) {
            case FAIL -> Verdict.NOT_MET;
            case NOT_EVALUATED -> Verdict.TO_CLEAR_UP;
            case PASS -> toConfirm ? Verdict.TO_CLEAR_UP : Verdict.MET;
            case NOT_APPLICABLE, NOT_AT_THIS_STAGE -> Verdict.NOT_APPLICABLE;
        };
    }

    /**
     * Returns what the outcome says of a project that has not come to the stage of the rule. What is not met stays: what was entered is
     * wrong at every stage. What is met or lacks an input becomes one that says nothing yet, so that nobody takes it for a yes.
     *
     * @param later   stage of the rule
     * @param reached stage of the project
     */
    Outcome before(Stage later, Stage reached) {
        if (result == Result.FAIL || result == Result.NOT_APPLICABLE) {
            return this;
        }
        Message why = Message.of("outcome.later-stage", Stages.term(later), Stages.term(reached));
        return new Outcome(rule, elementId, elementPath, Result.NOT_AT_THIS_STAGE, severity, Optional.empty(), List.of(), List.of(), false,
                why, Optional.empty(), List.of());
    }

    /** Returns what the outcome, which is met, says where it rests on open data that nobody confirmed: that it is to clear up. */
    Outcome onOpenData() {
        return new Outcome(rule, elementId, elementPath, result, severity, measure, missing, citations, true,
                Message.of("outcome.on-open-data", message), action, steps);
    }

    /**
     * Returns how much the outcome weighs as a finding.
     *
     * @return its severity where it is not met, a warning where it is to be cleared up, empty where it is no finding
     */
    public Optional<Severity> weight() {
        return switch (verdict()) {
            case NOT_MET -> Optional.of(severity);
            case TO_CLEAR_UP -> Optional.of(Severity.WARNING);
            default -> Optional.empty();
        };
    }

    /** Returns what the rule is called. */
    public Message title() {
        return Rule.title(rule);
    }

    /** Returns what was compared, and what to do where there is something. */
    public Message explanation() {
        return action.map(what -> Message.of("outcome.with-action", message, what)).orElse(message);
    }

    /** Returns whether its rule asks for entries and records alone; see {@link Rule#isAboutData()}. */
    public boolean isAboutData() {
        return RuleCatalogue.find(rule).filter(Rule::isAboutData).isPresent();
    }

    /** Returns where the limit comes from, the weakest of the sources; empty where it comes from the data. */
    public Optional<Citation> citation() {
        return citations.stream().findFirst();
    }

    /** Returns the measured value. */
    public OptionalDouble value() {
        return measure.isPresent() ? OptionalDouble.of(measure.get().value()) : OptionalDouble.empty();
    }

    /** Returns the limit that decides. */
    public OptionalDouble limit() {
        return measure.isPresent() ? OptionalDouble.of(measure.get().limit()) : OptionalDouble.empty();
    }

    /** Returns how far the value is on the good side of the limit; negative on the bad side. */
    public OptionalDouble margin() {
        return measure.isPresent() ? OptionalDouble.of(measure.get().margin()) : OptionalDouble.empty();
    }

    /** Returns the unit of value, limit and margin; empty where there are none. */
    public String unit() {
        return measure.map(Measure::unit).orElse("");
    }

    /** Tells whether the rule could be evaluated and had something to say: it was met or not met. */
    public boolean isEvaluated() {
        return result == Result.PASS || result == Result.FAIL;
    }
}
