package slopewright.ui.properties;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import slopewright.checks.Outcome;
import slopewright.checks.Verdict;
import slopewright.geometry.Lengths;
import slopewright.messages.MessageRenderer;
import slopewright.standards.Provenance;
import slopewright.ui.MessageTexts;
import slopewright.ui.preferences.Preferences;
import slopewright.ui.units.QuantityFormat;

/** Outcomes in words and numbers, the same everywhere in the window. */
public final class OutcomeTexts {

    private static final String BETWEEN = "  ·  ";

    private OutcomeTexts() {
    }

    /** Returns the order in which outcomes are read: by verdict, what is not met first, the graver first. */
    public static Comparator<Outcome> worstFirst() {
        return Comparator.comparing(Outcome::verdict).thenComparing(Outcome::severity, Comparator.reverseOrder());
    }

    /** Returns the verdict in words. */
    public static String verdict(Outcome outcome) {
        return MessageTexts.of(outcome.verdict().term());
    }

    /** Returns how many outcomes there are of each verdict that says something: {@code 1 not met · 3 to clear up · 61 met}. */
    public static String counts(Map<Verdict, Integer> counts) {
        return counts(counts, Verdict.NOT_MET, Verdict.TO_CLEAR_UP, Verdict.MET);
    }

    /** Returns how many outcomes there are that are open: {@code 1 not met · 3 to clear up}. */
    public static String open(Map<Verdict, Integer> counts) {
        return counts(counts, Verdict.NOT_MET, Verdict.TO_CLEAR_UP);
    }

    private static String counts(Map<Verdict, Integer> counts, Verdict... verdicts) {
        return Stream.of(verdicts).map(verdict -> counts.getOrDefault(verdict, 0) + " " + MessageTexts.of(verdict.term()))
                .collect(Collectors.joining(BETWEEN));
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

    /** Returns a number with its unit, lengths in the unit that the user prefers; empty where there is none. */
    public static String quantity(OptionalDouble value, String unit) {
        return withUnit(value, unit, "");
    }

    /** Returns a number with its sign and unit, lengths in the unit that the user prefers; empty where there is none. */
    public static String signed(OptionalDouble value, String unit) {
        return withUnit(value, unit, "+");
    }

    private static String withUnit(OptionalDouble value, String unit, String plus) {
        if (value.isEmpty()) {
            return "";
        }
        if (unit.equals("deg") && Preferences.isMinutes()) {
            String angle = QuantityFormat.preferred().degreesMinutes(value.getAsDouble());
            return (angle.startsWith("-") ? "" : plus) + angle;
        }
        boolean feet = unit.equals("m") && Preferences.isFeet();
        double number = feet ? Lengths.metresToFeet(value.getAsDouble()) : value.getAsDouble();
        String sign = feet ? "ft" : unit(unit);
        boolean close = sign.isEmpty() || sign.equals("°") || sign.equals("′");
        int decimals = unit.isEmpty() && number == Math.rint(number) ? 0 : unit.equals("deg") ? 4 : 2;
        String text = MessageTexts.renderer().fixed(number, decimals);
        return (text.startsWith("-") ? "" : plus) + text + (close ? "" : " ") + sign;
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
