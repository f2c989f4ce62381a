package slopewright.checks.internal;

import java.util.List;
import java.util.Locale;

import slopewright.geometry.Angles;
import slopewright.geometry.Lengths;

/** Numbers in explanations. */
final class Words {

    private Words() {
    }

    /** Writes a length in metres to the centimetre. */
    static String m(double metres) {
        return String.format(Locale.ROOT, "%.2f m", zeroed(metres, 0.005));
    }

    /** Writes a length in metres to the millimetre. */
    static String mm(double metres) {
        return String.format(Locale.ROOT, "%.3f m", zeroed(metres, 0.0005));
    }

    /** Writes a length in metres with feet beside it. */
    static String mFt(double metres) {
        return String.format(Locale.ROOT, "%.2f m (%.1f ft)", zeroed(metres, 0.005), Lengths.metresToFeet(metres));
    }

    /** Writes an angle as degrees and minutes. */
    static String deg(double degrees) {
        return Angles.format(degrees);
    }

    /** Writes an angle as decimal degrees. */
    static String degrees(double degrees) {
        return String.format(Locale.ROOT, "%.2f°", degrees);
    }

    /** Writes minutes of arc. */
    static String min(double minutes) {
        return String.format(Locale.ROOT, "%.1f'", minutes);
    }

    /** Writes a plain number. */
    static String number(double number) {
        return number == Math.rint(number) ? String.valueOf((long) number) : String.format(Locale.ROOT, "%.2f", number);
    }

    /** Joins words to a list. */
    static String list(List<String> words) {
        return words.size() < 2 ? String.join("", words)
                : String.join(", ", words.subList(0, words.size() - 1)) + " and " + words.get(words.size() - 1);
    }

    private static double zeroed(double number, double below) {
        return Math.abs(number) < below ? 0 : number;
    }
}
