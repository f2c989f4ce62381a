package slopewright.geometry;

import java.util.regex.Pattern;

/** Reads decimal numbers as people and files write them, and nothing else: no {@code NaN}, no hexadecimal, no type suffix. */
public final class Decimals {

    private static final Pattern DECIMAL = Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d{1,3})?");

    private Decimals() {
    }

    /**
     * Reads a decimal number.
     *
     * @param text the text, with a point as the decimal mark
     * @return the number, finite
     * @throws IllegalArgumentException where the text is no finite decimal number; the message names the text
     */
    public static double parse(String text) {
        return parse(text.strip(), text);
    }

    static double parse(String number, String shown) {
        if (!DECIMAL.matcher(number).matches()) {
            throw new IllegalArgumentException("'" + shown.strip() + "' is not a number");
        }
        double value = Double.parseDouble(number);
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("'" + shown.strip() + "' is too large");
        }
        return value;
    }
}
