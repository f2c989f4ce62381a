package slopewright.ui;

import java.util.List;
import java.util.Locale;

import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Reasoned;
import slopewright.messages.Words;
import slopewright.model.Identified;
import slopewright.siting.ElementNames;
import slopewright.ui.preferences.Preferences;

/** Messages of the core as the window says them: in its language, with lengths in the unit that the user prefers. */
public final class MessageTexts {

    private MessageTexts() {
    }

    /** Returns the renderer of the window as it is set now; whoever renders much asks for it once. */
    public static MessageRenderer renderer() {
        return MessageRenderer.of(Locale.getDefault()).inFeet(Preferences.isFeet()).inDecimalDegrees(!Preferences.isMinutes());
    }

    /** Returns the words of a message. */
    public static String of(Message message) {
        return renderer().render(message);
    }

    /** Returns the words of an argument: a term, a quantity, a name, or several of these. */
    public static String of(Argument argument) {
        return renderer().write(argument);
    }

    /** Returns a length that was worked out, rounded as in every sentence, report and command; what was typed stands as it is kept. */
    public static String length(double valueM) {
        return of(Words.m(valueM));
    }

    /** Returns what an element is called by itself: {@code runway 09}. */
    public static String label(Identified element) {
        return of(ElementNames.of(element));
    }

    /** Returns where an element stands, from the runway end or helipad downward: {@code runway 09 > PAPI left > unit A}. */
    public static String path(Identified element) {
        return of(ElementNames.way(element));
    }

    /** Returns why something could not be worked out or done. */
    public static String reason(Throwable thrown) {
        return of(Reasoned.of(thrown));
    }

    /** Returns the words of several messages as a list. */
    public static String list(List<Message> messages) {
        return renderer().write(Words.list(messages));
    }
}
