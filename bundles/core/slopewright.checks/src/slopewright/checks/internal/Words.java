package slopewright.checks.internal;

import java.util.List;
import java.util.Locale;

import slopewright.geometry.Angles;
import slopewright.geometry.Lengths;

/** Numbers in explanations. */
public final class Words {

    private Words() {
    }

    /** Writes a length in metres to the centimetre. */
    public static String m(double metres) {
        return String.format(Locale.ROOT, "%.2f m", zeroed(metres, 0.005));
    }

    /** Writes a length in metres to the millimetre. */
    public static String mm(double metres) {
        return String.format(Locale.ROOT, "%.3f m", zeroed(metres, 0.0005));
    }

    /** Writes a length in metres with feet beside it. */
    public static String mFt(double metres) {
        return String.format(Locale.ROOT, "%.2f m (%.1f ft)", zeroed(metres, 0.005), Lengths.metresToFeet(metres));
    }

    /** Writes an angle as degrees and minutes. */
    public static String deg(double degrees) {
        return Angles.format(degrees);
    }

    /** Writes an angle as decimal degrees. */
    public static String degrees(double degrees) {
        return String.format(Locale.ROOT, "%.2f°", degrees);
    }

    /** Writes minutes of arc. */
    public static String min(double minutes) {
        return String.format(Locale.ROOT, "%.1f'", minutes);
    }

    /** Writes a plain number. */
    public static String number(double number) {
        return number == Math.rint(number) ? String.valueOf((long) number) : String.format(Locale.ROOT, "%.2f", number);
    }

    /** Joins words to a list. */
    public static String list(List<String> words) {
        return words.size() < 2 ? String.join("", words)
                : String.join(", ", words.subList(0, words.size() - 1)) + " and " + words.get(words.size() - 1);
    }

    private static double zeroed(double number, double below) {
        return Math.abs(number) < below ? 0 : number;
    }
}
