package slopewright.report;

import java.util.List;
import java.util.Locale;

import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;

/** The cautions that every document carries. */
public final class Cautions {

    private static final List<Message> ALL = List.of(Message.of("caution.design-aid"), Message.of("caution.operation"));

    private Cautions() {
    }

    /** Returns the cautions, one paragraph each. */
    public static List<Message> messages() {
        return ALL;
    }

    /** Returns the cautions in a language, one paragraph each. */
    public static List<String> in(Locale language) {
        return ALL.stream().map(MessageRenderer.of(language)::render).toList();
    }
}
