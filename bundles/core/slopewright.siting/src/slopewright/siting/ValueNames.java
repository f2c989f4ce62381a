package slopewright.siting;

import java.util.Locale;
import java.util.Set;

import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Words;

/** What the values and tables of rule sets are called in sentences of any language, instead of their keys. */
public final class ValueNames {
    private static final String UNIT = "-(m|ft|deg|min|percent|hz|cd|lx|v|s|times)$";

    private ValueNames() {
    }

    /**
     * Returns what a value is called.
     *
     * @param key key of a value or table of a rule set
     * @return its family where it is one of a family, and what it says; the key itself where nobody has named it
     */
    public static Argument of(String key) {
        String whole = key.replaceFirst(UNIT, "");
        Set<String> known = MessageRenderer.of(Locale.ENGLISH).keys();
        if (known.contains("term.value." + whole)) {
            return Words.term("value." + whole);
        }
        int point = whole.indexOf('.');
        String what = whole.substring(point + 1);
        return Families.find(key.substring(0, Math.max(0, point))).filter(family -> known.contains("term.value." + what))
                .<Argument>map(family -> Message.of("value.of-family", Words.name(family.name()), Words.term("value." + what)))
                .orElseGet(() -> Words.name(key));
    }
}
