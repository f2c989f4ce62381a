package slopewright.checks.internal;

import java.util.List;

import slopewright.messages.Message;
import slopewright.messages.Words;

/** Ends a rule for one element: an input is missing, or the rule has nothing to say. */
public final class Stop extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Message explanation;
    private final transient List<Message> missing;

    private Stop(Message explanation, List<Message> missing) {
        super(explanation.key(), null, false, false);
        this.explanation = explanation;
        this.missing = missing;
    }

    /** Says that an input is missing: a name of the catalogue. */
    public static Stop missing(Message what) {
        return new Stop(Message.of("outcome.missing", what), List.of(what));
    }

    /** Says that an input is missing, with a sentence of its own. */
    public static Stop missing(Message what, Message explanation) {
        return new Stop(explanation, List.of(what));
    }

    /** Says everything that several ends say: what any of them lacks, or that the rule has nothing to say where one says so. */
    public static Stop together(List<Stop> stops) {
        Stop first = stops.stream().filter(stop -> stop.missing.isEmpty()).findFirst().orElse(stops.get(0));
        List<Message> missing = stops.stream().flatMap(stop -> stop.missing.stream()).distinct().toList();
        return stops.size() == 1 || first.missing.isEmpty() || missing.size() == 1 ? first
                : new Stop(Message.of("outcome.missing-several", Words.list(missing)), missing);
    }

    /** Says that something could not be worked out; the reason names what is missing. */
    public static Stop unsolved(Message reason) {
        return new Stop(Message.of("outcome.unsolved", reason), List.of(reason));
    }

    /** Says that the rule has nothing to say. */
    public static Stop notApplicable(Message reason) {
        return new Stop(reason, List.of());
    }

    /** Returns why. */
    public Message explanation() {
        return explanation;
    }

    /** Returns what is missing; empty where the rule has nothing to say. */
    public List<Message> missing() {
        return missing;
    }
}
