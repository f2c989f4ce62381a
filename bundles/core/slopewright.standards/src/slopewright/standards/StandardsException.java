package slopewright.standards;

import slopewright.messages.Message;
import slopewright.messages.Reasoned;

/** Data of a rule set, or a book of values, that cannot be trusted: the message names the file, the line and the reason. */
public final class StandardsException extends RuntimeException implements Reasoned {

    private static final long serialVersionUID = 1L;

    private final transient Message reason;

    /** Makes the exception for people of every language; the line is 0 where the whole file is meant. */
    public StandardsException(String file, int line, Message reason) {
        this(line > 0 ? Message.said("rule-file.line", file, String.valueOf(line), reason) : Message.said("rule-file.whole", file, reason));
    }

    /** Makes the exception for data that are shipped, whose reader is the one who ships them; the line is 0 for the whole file. */
    public StandardsException(String file, int line, String reason) {
        this(file, line, Message.said("plain", reason));
    }

    private StandardsException(Message reason) {
        super(reason.english());
        this.reason = reason;
    }

    @Override
    public Message reason() {
        return reason == null ? Message.said("plain", getMessage()) : reason;
    }
}
