package slopewright.ui.properties;

import java.util.Locale;
import java.util.OptionalDouble;

import slopewright.checks.Outcome;

/** Outcomes in words and numbers, the same everywhere in the window. */
public final class OutcomeTexts {

    private OutcomeTexts() {
    }

    /** Returns the verdict in words. */
    public static String verdict(Outcome outcome) {
        return switch (outcome.verdict()) {
            case PASS -> "met";
            case FAIL -> "not met";
            case NOT_APPLICABLE -> "does not apply";
            case NOT_EVALUATED -> "not evaluated";
        };
    }

    /** Returns a number with as many decimals as its unit needs, empty where there is none. */
    public static String number(OptionalDouble value, String unit) {
        if (value.isEmpty()) {
            return "";
        }
        int decimals = switch (unit) {
            case "" -> value.getAsDouble() == Math.rint(value.getAsDouble()) ? 0 : 2;
            case "deg" -> 4;
            default -> 2;
        };
        return String.format(Locale.ROOT, "%." + decimals + "f", value.getAsDouble() + 0.0);
    }

    /** Returns a unit as people write it. */
    public static String unit(String unit) {
        return switch (unit) {
            case "deg" -> "°";
            case "min" -> "′";
            default -> unit;
        };
    }
}
