package slopewright.ui.units;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import slopewright.geometry.CoordinateException;
import slopewright.geometry.CoordinateText;
import slopewright.geometry.CoordinateText.Axis;
import slopewright.geometry.Lengths;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Words;
import slopewright.ui.preferences.Preferences;

/**
 * Shows numbers in the units that the user prefers and reads what the user types. A unit that is typed wins over the preferred one:
 * {@code 50 ft}, {@code 15.2 m}, {@code 3°05'}, {@code 3.0833}; latitudes and longitudes in any form of {@link CoordinateText}.
 */
public final class QuantityFormat {

    private static final String NUMBER = "([+-]?(?:\\d+(?:[.,]\\d*)?|[.,]\\d+)(?:[eE][+-]?\\d+)?)";
    private static final Pattern PLAIN = Pattern.compile(NUMBER + "\\s*(\\S*)");
    private static final Pattern LINES = Pattern.compile("\\R");
    /** A comma before three digits, which is a decimal sign to some and parts thousands for others; a nought before it is no thousand. */
    private static final Pattern TWO_WAYS = Pattern.compile("([+-]?[1-9]\\d{0,2}),(\\d{3})(?![\\d.,]).*");
    private static final Pattern DEGREES_MINUTES = Pattern.compile(
            "([+-]?)(\\d+)\\s*(?:°|deg|d|\\s)\\s*(\\d+(?:[.,]\\d*)?)\\s*(?:'|′|min|m)?");

    private final boolean feet;
    private final boolean minutes;
    private final MessageRenderer renderer;

    /**
     * Makes a format in English.
     *
     * @param feet    whether lengths are shown, and read where no unit is typed, in feet
     * @param minutes whether angles are shown in degrees and minutes
     */
    public QuantityFormat(boolean feet, boolean minutes) {
        this(feet, minutes, Locale.ENGLISH);
    }

    /**
     * Makes a format.
     *
     * @param feet     as above
     * @param minutes  as above
     * @param language the language whose decimal sign is shown; any is read
     */
    public QuantityFormat(boolean feet, boolean minutes, Locale language) {
        this.feet = feet;
        this.minutes = minutes;
        this.renderer = MessageRenderer.of(language);
    }

    /** Returns the format that the user prefers now, in the language of the window. */
    public static QuantityFormat preferred() {
        return new QuantityFormat(Preferences.isFeet(), Preferences.isMinutes(), Locale.getDefault());
    }

    /** Returns the unit in which a quantity is shown; empty where it has none or it stands in the number. */
    public String unit(Quantity quantity) {
        return quantity == Quantity.LENGTH && feet ? "ft" : quantity.unit();
    }

    /**
     * Shows a number without its unit, as it is typed.
     *
     * @param value    the number as the model holds it
     * @param quantity what it is
     */
    public String show(double value, Quantity quantity) {
        if (quantity == Quantity.LENGTH && feet) {
            return plain(Lengths.metresToFeet(value), 2);
        }
        if (quantity == Quantity.ANGLE && minutes) {
            return degreesMinutes(value);
        }
        return plain(value, quantity.decimals());
    }

    /** Shows a number with its unit, and an angle in its other form too. */
    public String showWithUnit(double value, Quantity quantity) {
        if (quantity == Quantity.ANGLE) {
            String decimal = plain(value, 4) + "°";
            boolean whole = Math.abs(value - Math.rint(value)) < 1e-9;
            return minutes ? degreesMinutes(value) + " (" + decimal + ")" : whole ? decimal : decimal + " (" + degreesMinutes(value) + ")";
        }
        String unit = unit(quantity);
        return unit.isEmpty() ? show(value, quantity) : show(value, quantity) + (unit.equals("′") ? "" : " ") + unit;
    }

    /** Shows an angle in degrees and minutes to a hundredth of a minute: {@code 3°05'}. */
    public String degreesMinutes(double valueDeg) {
        long hundredths = Math.round(Math.abs(valueDeg) * 6000);
        String rest = plain(hundredths % 6000 / 100.0, 2);
        String padded = rest.length() == 1 || !Character.isDigit(rest.charAt(1)) ? "0" + rest : rest;
        return (valueDeg < 0 && hundredths > 0 ? "-" : "") + hundredths / 6000 + "°" + padded + "'";
    }

    private String plain(double value, int decimals) {
        String text = renderer.fixed(value, decimals);
        return decimals == 0 ? text : text.replaceAll("[.,]?0+$", "");
    }

    /**
     * Reads what the user typed. Several lines are no number, and nor is, where a point is the decimal sign, what has a comma before three
     * digits: {@code 1,234} is a thousand to some. No angle is as large.
     *
     * @param text     the text
     * @param quantity what it is
     * @return the number as the model holds it
     * @throws IllegalArgumentException where it is no such number; the message says what is expected
     */
    public double read(String text, Quantity quantity) {
        String trimmed = text.strip();
        if (LINES.matcher(trimmed).find()) {
            throw new IllegalArgumentException(renderer.render(Message.of("typed.lines")));
        }
        if (quantity.isCoordinate()) {
            return coordinate(trimmed, quantity == Quantity.LATITUDE ? Axis.LATITUDE : Axis.LONGITUDE);
        }
        if (quantity == Quantity.ANGLE) {
            Matcher both = DEGREES_MINUTES.matcher(trimmed);
            if (both.matches()) {
                return angle(both);
            }
        }
        Matcher twoWays = TWO_WAYS.matcher(trimmed);
        if (twoWays.matches() && quantity != Quantity.ANGLE && renderer.fixed(0.5, 1).contains(".")) {
            throw new IllegalArgumentException(renderer.render(Message.of("typed.two-ways", Words.name(trimmed),
                    Words.name(twoWays.group(1) + twoWays.group(2)), Words.name(twoWays.group(1) + "." + twoWays.group(2)))));
        }
        Matcher plain = PLAIN.matcher(trimmed);
        if (!plain.matches()) {
            throw new IllegalArgumentException(expected(text, quantity));
        }
        double number = Double.parseDouble(plain.group(1).replace(',', '.'));
        double value = number * factor(plain.group(2).toLowerCase(Locale.ROOT), text, quantity);
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(expected(text, quantity));
        }
        return value;
    }

    private double coordinate(String text, Axis axis) {
        try {
            return CoordinateText.read(text, axis);
        } catch (CoordinateException e) {
            boolean example = e.kind() == CoordinateException.Kind.NOT_UNDERSTOOD;
            throw new IllegalArgumentException(renderer.render(Message.of("coordinate." + e.kind().key(), Words.name(e.text()),
                    example ? Words.term("axis-example." + axis.word()) : Words.term("axis." + axis.word()), Words.name(e.detail()))), e);
        }
    }

    private double angle(Matcher both) {
        double minutesOfArc = Double.parseDouble(both.group(3).replace(',', '.'));
        if (minutesOfArc >= 60) {
            throw new IllegalArgumentException(renderer.render(Message.of("typed.sixty", Words.name(both.group(3)))));
        }
        double value = Double.parseDouble(both.group(2)) + minutesOfArc / 60;
        return both.group(1).equals("-") ? -value : value;
    }

    private double factor(String unit, String text, Quantity quantity) {
        if (quantity == Quantity.LENGTH) {
            return switch (unit) {
                case "" -> feet ? Lengths.METRES_PER_FOOT : 1;
                case "m" -> 1;
                case "ft", "'" -> Lengths.METRES_PER_FOOT;
                default -> throw new IllegalArgumentException(expected(text, quantity));
            };
        }
        boolean angle = quantity == Quantity.ANGLE;
        if (angle && (unit.equals("'") || unit.equals("′") || unit.equals("min"))) {
            return 1 / 60.0;
        }
        if (unit.isEmpty() || unit.equalsIgnoreCase(quantity.unit()) || angle && unit.equals("deg")
                || quantity == Quantity.MINUTES && (unit.equals("'") || unit.equals("min"))) {
            return 1;
        }
        throw new IllegalArgumentException(expected(text, quantity));
    }

    private String expected(String text, Quantity quantity) {
        Argument example = switch (quantity) {
            case LENGTH -> Words.term("typed.length");
            case ANGLE -> Words.term("typed.angle");
            default -> quantity.unit().isEmpty() ? Words.term("typed.number") : Message.of("typed.number-in", Words.name(quantity.unit()));
        };
        return renderer.render(Message.of("typed.not-understood", Words.name(text), example));
    }
}
