package slopewright.siting;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;

import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.standards.RuleChoice;

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
                .<Argument>map(family -> Message.of("value.of-family", Families.name(family), Words.term("value." + what)))
                .orElseGet(() -> Words.name(key));
    }

    /**
     * Returns the number of a value as a reader holds it against a document: every digit with the unit; the word of a choice; the sum of
     * all numbers of a table.
     *
     * @param key   key of a value or table of a rule set
     * @param value its number as printed
     * @param unit  its printed unit; empty for a table
     */
    public static Argument number(String key, double value, String unit) {
        Argument exact = Words.quantity(value, Notation.EXACT);
        return switch (unit) {
            case "choice", "flag" -> word(key, value).<Argument>map(word -> Words.term("value.word." + word.key())).orElse(exact);
            case "count" -> exact;
            case "" -> Message.of("value.total", exact);
            case "deg" -> Message.of("value.degrees", exact);
            case "min" -> Message.of("value.minutes", exact);
            case "code" -> Message.of("value.code-number", exact);
            default -> Message.of("value.unit", exact, Words.name(unit));
        };
    }

    /** Returns the word of a choice by its place among those of its kind, empty where there is none. */
    public static Optional<RuleChoice> word(String key, double place) {
        return RuleChoice.Kind.of(key).flatMap(kind -> kind.words().stream().filter(word -> word.place() == place).findFirst());
    }
}
