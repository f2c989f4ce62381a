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
            case "m", "ft" -> 2;
            case "deg", "°" -> 3;
            default -> 2;
        };
        double shown = value.getAsDouble();
        if (shown == Math.rint(shown) && Math.abs(shown) < 1e9) {
            return String.format(Locale.ROOT, "%.0f", shown == 0 ? 0.0 : shown);
        }
        return String.format(Locale.ROOT, "%." + decimals + "f", shown);
    }
}
