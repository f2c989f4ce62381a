package slopewright.ui.properties;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

import slopewright.checks.Outcome;
import slopewright.geometry.Lengths;
import slopewright.messages.MessageRenderer;
import slopewright.standards.Provenance;
import slopewright.ui.MessageTexts;
import slopewright.ui.preferences.Preferences;

/** Outcomes in words and numbers, the same everywhere in the window. */
public final class OutcomeTexts {

    private OutcomeTexts() {
    }

    /** Returns the verdict in words. */
    public static String verdict(Outcome outcome) {
        return MessageTexts.of(outcome.verdict().term());
    }

    /** Returns how well the limit is known, and whether it is to be confirmed; empty where there is none. */
    public static String provenance(Outcome outcome) {
        String known = outcome.citation().map(citation -> provenance(citation.provenance())).orElse("");
        return outcome.toConfirm() ? known + (known.isEmpty() ? "" : ", ") + PropertyTexts.get("toConfirm") : known;
    }

    /** Returns how well a value is known in words. */
    public static String provenance(Provenance provenance) {
        return PropertyTexts.get("provenance." + provenance.key());
    }

    /** Returns a number with as many decimals as its unit needs, empty where there is none. */
    public static String number(OptionalDouble value, String unit) {
        return value.isEmpty() ? "" : text(value.getAsDouble(), unit, "%.");
    }

    private static String text(double value, String unit, String form) {
        int decimals = unit.isEmpty() && value == Math.rint(value) ? 0 : unit.equals("deg") ? 4 : 2;
        double shown = Math.abs(value) < Math.pow(10, -decimals) / 2 ? 0 : value;
        return String.format(Locale.ROOT, form + decimals + "f", shown);
    }

    /** Returns a number with its unit, lengths in the unit that the user prefers; empty where there is none. */
    public static String quantity(OptionalDouble value, String unit) {
        return withUnit(value, unit, "%.");
    }

    /** Returns a number with its sign and unit, lengths in the unit that the user prefers; empty where there is none. */
    public static String signed(OptionalDouble value, String unit) {
        return withUnit(value, unit, "%+.");
    }

    private static String withUnit(OptionalDouble value, String unit, String form) {
        if (value.isEmpty()) {
            return "";
        }
        boolean feet = unit.equals("m") && Preferences.isFeet();
        double number = feet ? Lengths.metresToFeet(value.getAsDouble()) : value.getAsDouble();
        String sign = feet ? "ft" : unit(unit);
        boolean close = sign.isEmpty() || sign.equals("°") || sign.equals("′");
        return text(number, unit, form) + (close ? "" : " ") + sign;
    }

    /** Returns a unit as people write it. */
    public static String unit(String unit) {
        return switch (unit) {
            case "deg" -> "°";
            case "min" -> "′";
            default -> unit;
        };
    }

    /** Returns how the numbers of an outcome come about, one formula a line, the numbers put in. */
    public static List<String> steps(Outcome outcome) {
        MessageRenderer renderer = MessageTexts.renderer();
        return outcome.steps().stream().map(renderer::render).toList();
    }
}
