package slopewright.ui.diagram.commands;

import java.util.Locale;
import java.util.MissingResourceException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import slopewright.ui.diagram.internal.Messages;

/** Says what an edit did in the language of the platform. An edit names itself in English; one that is not known stays as it is. */
public final class EditLabels {

    private static final Pattern COPY = Pattern.compile("Copy aid to (.+), (laid out anew|same geometry)");
    private static final Pattern VERB = Pattern.compile("(Add|Remove|Change) (.+)");

    private EditLabels() {
    }

    /**
     * Returns what an edit did, as it stands after "Undo".
     *
     * @param label what the edit calls itself
     */
    public static String of(String label) {
        if (label.isEmpty()) {
            return label;
        }
        try {
            return Messages.get("edit." + word(label));
        } catch (MissingResourceException e) {
            return pattern(label);
        }
    }

    private static String pattern(String label) {
        Matcher copy = COPY.matcher(label);
        if (copy.matches()) {
            return Messages.get("edit.copy-" + word(copy.group(2)), copy.group(1));
        }
        Matcher verb = VERB.matcher(label);
        return verb.matches() ? Messages.get("edit." + word(verb.group(1)) + "-any", verb.group(2)) : label;
    }

    private static String word(String text) {
        return text.toLowerCase(Locale.ROOT).replace(' ', '-');
    }
}
