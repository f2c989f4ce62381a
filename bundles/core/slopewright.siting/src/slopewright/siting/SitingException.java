package slopewright.siting;

import java.util.Arrays;
import java.util.List;

import slopewright.messages.Message;
import slopewright.messages.Reasoned;
import slopewright.messages.Words;

/** A siting that cannot be solved: the message says what, where and what to do. */
public final class SitingException extends RuntimeException implements Reasoned {
    private static final long serialVersionUID = 1L;

    private final transient Message reason;
    private final transient List<Input> missing;
    private final boolean wrong;

    /** Makes an exception for a reason. */
    public SitingException(Message reason) {
        this(reason, List.of(), false);
    }

    private SitingException(Message reason, List<Input> missing, boolean isWrong) {
        super(reason.english());
        this.reason = reason;
        this.missing = missing;
        wrong = isWrong;
    }

    /** Makes an exception for units that no further entry makes right: all is there, and it shows no signal of its family. */
    public static SitingException wrong(Message reason) {
        return new SitingException(reason, List.of(), true);
    }

    /** Makes an exception for missing inputs, of which one is enough. */
    public static SitingException missing(Input... inputs) {
        List<Message> names = Arrays.stream(inputs).map(Input::message).toList();
        return new SitingException(inputs.length == 1 ? Message.of("siting.missing", names.get(0))
                : Message.of("siting.missing-one-of", Words.list(names)), List.of(inputs), false);
    }

    @Override
    public Message reason() {
        return reason == null ? Message.of("plain", Words.name(String.valueOf(getMessage()))) : reason;
    }

    /** Returns the inputs that are missing; empty where something else is wrong. */
    public List<Input> missing() {
        return missing == null ? List.of() : missing;
    }

    /** Returns whether the units are wrong as they stand, whatever else is entered. */
    public boolean isWrong() {
        return wrong;
    }
}
