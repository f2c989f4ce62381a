package slopewright.messages;

import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Puts the texts of a catalogue in marks, as {@link MessageRenderer#MARKED the marked language} has them. */
public final class Marks {
    private Marks() {
    }

    /**
     * Returns a text in marks, its places outside of them.
     *
     * @param text   the text
     * @param places what is put into it later
     */
    public static String around(String text, Pattern places) {
        return around(text, places, MatchResult::group);
    }

    static String around(String text, Pattern places, Function<MatchResult, String> kept) {
        Matcher place = places.matcher(text);
        StringBuilder marked = new StringBuilder();
        int from = 0;
        while (place.find()) {
            marked.append(around(text.substring(from, place.start()))).append(kept.apply(place));
            from = place.end();
        }
        return marked.append(around(text.substring(from))).toString();
    }

    static String around(String text) {
        return text.isEmpty() ? "" : "\u27e6" + text + "\u27e7";
    }
}
