package slopewright.report.internal;

import java.util.Locale;
import java.util.OptionalDouble;

import slopewright.geometry.Angles;
import slopewright.geometry.Lengths;

/** Writes numbers as documents print them. */
final class Numbers {

    private Numbers() {
    }

    static String two(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return "-0.00".equals(text) ? "0.00" : text;
    }

    static String metres(double value) {
        return String.format(Locale.ROOT, "%.2f m", value);
    }

    static String metresAndFeet(double value) {
        return String.format(Locale.ROOT, "%.2f m (%.1f ft)", value, Lengths.metresToFeet(value));
    }

    static String angle(double degrees) {
        return String.format(Locale.ROOT, "%s (%.3f°)", Angles.format(degrees), degrees);
    }

    static String plain(OptionalDouble value) {
        return value.isPresent() ? plain(value.getAsDouble()) : "";
    }

    static String plain(double value) {
        String text = String.format(Locale.ROOT, "%.3f", value).replaceAll("0+$", "").replaceAll("\\.$", "");
        return "-0".equals(text) ? "0" : text;
    }

    static String orUnknown(Object value) {
        return value == null ? "not known" : value instanceof Double number ? plain(number) : value.toString();
    }

    static String orUnknown(Double value, String unit) {
        return value == null ? "not known" : plain(value) + " " + unit;
    }
}
