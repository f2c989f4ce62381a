package slopewright.ui.properties;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import slopewright.checks.Measure;
import slopewright.checks.Outcome;
import slopewright.checks.Verdict;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Rounding;
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

    /** Returns the value of an outcome with its unit, told apart from its limit; empty where it has none. */
    public static String value(Outcome outcome) {
        return outcome.measure().map(measure -> number(measure.value(), measure.limit(), same(measure), measure.unit(), "")).orElse("");
    }

    /** Returns the limit of an outcome with its unit, told apart from its value; empty where it has none. */
    public static String limit(Outcome outcome) {
        return outcome.measure().map(measure -> number(measure.limit(), measure.value(), same(measure), measure.unit(), "")).orElse("");
    }

    /** Returns the margin of an outcome with its sign and unit, never as nothing where it decides; empty where it has none. */
    public static String margin(Outcome outcome) {
        return outcome.measure().map(measure -> number(measure.margin(), 0, same(measure), measure.unit(), "+")).orElse("");
    }

    /** Within what the model can hold a value is at its limit and stands as it. */
    private static double same(Measure measure) {
        return measure.isMet() ? measure.resolution() : 0;
    }

    /** Returns a number with its unit, lengths in the unit that the user prefers; empty where there is none. */
    public static String quantity(OptionalDouble value, String unit) {
        return value.isEmpty() ? "" : number(value.getAsDouble(), value.getAsDouble(), 0, unit, "");
    }

    /** Returns a margin with its sign and unit, never as nothing where it is not; empty where there is none. */
    public static String signed(OptionalDouble value, String unit) {
        return value.isEmpty() ? "" : number(value.getAsDouble(), 0, 0, unit, "+");
    }

    private static String number(double value, double other, double same, String unit, String plus) {
        if (unit.equals("deg") && Preferences.isMinutes()) {
            QuantityFormat format = QuantityFormat.preferred();
            String angle = format.degreesMinutes(value);
            if (!Rounding.isApart(value, other, same) || !angle.equals(format.degreesMinutes(other))) {
                return (angle.startsWith("-") ? "" : plus) + angle;
            }
        }
        if (unit.equals("m")) {
            String length = MessageTexts.renderer().told(value, other, same, Math.max(Math.abs(value), Math.abs(other)));
            return (length.startsWith("-") ? "" : plus) + length;
        }
        String sign = unit(unit);
        boolean close = sign.isEmpty() || sign.equals("°") || sign.equals("′");
        int decimals = unit.isEmpty() && value == Math.rint(value) ? 0 : unit.equals("deg") ? 4 : 2;
        String text = MessageTexts.renderer().fixed(value, Rounding.telling(value, other, decimals, same));
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
