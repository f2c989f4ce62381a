package slopewright.checks;

import slopewright.messages.MessageRenderer;
import slopewright.messages.Rounding;

/**
 * A measure in words, the same in report, window and command line: value, limit and margin with their unit, each rounded as its quantity
 * is. A value on the wrong side of its limit never stands as its limit, nor its margin as nothing; what is at the limit within what the
 * model can hold does.
 *
 * @param value  the value with its unit
 * @param limit  the limit with its unit
 * @param margin the margin with its unit; a minus where the value is on the bad side
 */
public record MeasureText(String value, String limit, String margin) {

    /** Returns the words of a measure in the language and the units of a renderer; an angle stands in decimal degrees. */
    public static MeasureText of(Measure measure, MessageRenderer renderer) {
        return new MeasureText(number(measure, measure.value(), measure.limit(), renderer), number(measure, measure.limit(),
                measure.value(), renderer), number(measure, measure.margin(), 0, renderer));
    }

    /** Returns how many decimals a quantity has that is no length, by its unit. */
    public static int decimals(String unit) {
        return switch (unit) {
            case "min", "h", "kt", "W", "cd" -> 1;
            case "%", "V", "A" -> 2;
            default -> 3;
        };
    }

    private static String number(Measure measure, double value, double other, MessageRenderer renderer) {
        double same = measure.isMet() ? measure.resolution() : 0;
        String unit = measure.unit();
        if (unit.equals("m")) {
            return renderer.told(value, other, same, Math.max(Math.abs(measure.value()), Math.abs(measure.limit())));
        }
        String text = renderer.fixed(value, Rounding.telling(value, other, decimals(unit), same));
        String plain = text.matches("-?\\d+[.,]\\d+") ? text.replaceAll("[.,]?0+$", "") : text;
        return plain + switch (unit) {
            case "" -> "";
            case "deg" -> "\u00b0";
            case "min" -> "'";
            default -> " " + unit;
        };
    }
}
