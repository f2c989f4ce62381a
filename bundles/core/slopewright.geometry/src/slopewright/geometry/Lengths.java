package slopewright.geometry;

import java.util.Locale;

/** Conversions and text forms of lengths, which are metres everywhere unless a name says otherwise. */
public final class Lengths {

    /** The international foot in metres, exact. */
    public static final double METRES_PER_FOOT = 0.3048;

    /** The international nautical mile in metres, exact. */
    public static final double METRES_PER_NAUTICAL_MILE = 1852.0;

    /** The statute mile in metres, exact (5280 international feet). */
    public static final double METRES_PER_STATUTE_MILE = 5280 * METRES_PER_FOOT;

    /** The international inch in metres, exact. */
    public static final double METRES_PER_INCH = 0.0254;

    private Lengths() {
    }

    /** Returns feet as metres. */
    public static double feetToMetres(double feet) {
        return feet * METRES_PER_FOOT;
    }

    /** Returns metres as feet. */
    public static double metresToFeet(double metres) {
        return metres / METRES_PER_FOOT;
    }

    /**
     * Reads a length: a decimal number of metres, or of feet where the suffix {@code ft} follows, or of metres with the suffix
     * {@code m}.
     *
     * @param text the text, for example {@code 12.5} or {@code 50ft}
     * @return metres, finite
     * @throws IllegalArgumentException where the text is no finite number; the message names the text
     */
    public static double parse(String text) {
        String trimmed = text.strip().toLowerCase(Locale.ROOT);
        double factor = 1;
        String number = trimmed;
        if (trimmed.endsWith("ft")) {
            factor = METRES_PER_FOOT;
            number = trimmed.substring(0, trimmed.length() - 2).strip();
        } else if (trimmed.endsWith("m")) {
            number = trimmed.substring(0, trimmed.length() - 1).strip();
        }
        return Decimals.parse(number, text) * factor;
    }
}
