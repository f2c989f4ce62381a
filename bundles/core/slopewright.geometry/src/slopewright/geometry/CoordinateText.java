package slopewright.geometry;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import slopewright.geometry.CoordinateException.Kind;

/**
 * Latitudes and longitudes as people write them: decimal degrees ({@code -11.9}, {@code 11.9 W}), degrees and minutes
 * ({@code 47 18.0 N}), degrees, minutes and seconds ({@code 47°18'00.5"N}, {@code N 47-18-00.5}), and the packed form of the
 * aeronautical publications ({@code 471800.5N}, {@code 0115400W}). A decimal comma is read as a point. North and east are positive; the
 * letter O is not read, for it is east in one language and west in another.
 */
public final class CoordinateText {

    /** Which of the two angles it is. */
    public enum Axis {
        /** North positive, 90 degrees at most. */
        LATITUDE(90, 'N', 'S', 2),
        /** East positive, 180 degrees at most. */
        LONGITUDE(180, 'E', 'W', 3);

        private final double most;
        private final char positive;
        private final char negative;
        private final int digits;

        Axis(double most, char positive, char negative, int digits) {
            this.most = most;
            this.positive = positive;
            this.negative = negative;
            this.digits = digits;
        }

        /** Returns its name in English, which is that in the catalogues. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    private static final String DECIMALS = "(?:[.,]\\d*)?";
    private static final String GAP = "\\s*[°º:]\\s*|\\s+|-|\\s*deg\\s*|\\s*d\\s*";
    private static final Pattern SPACED = Pattern.compile("(\\d+)(?:" + GAP + ")(\\d+" + DECIMALS
            + ")(?:\\s*['′’m:]\\s*|\\s+|-)?(?:(\\d+"
            + DECIMALS + ")\\s*(?:\"|″|”|''|s)?)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern DECIMAL = Pattern.compile("(\\d+" + DECIMALS + "|[.,]\\d+)\\s*(?:°|º|deg|d)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern PACKED = Pattern.compile("(\\d{2,3})(\\d{2})(\\d{2}" + DECIMALS + ")");
    private static final double MINUTES = 60;
    private static final double SECONDS = 3600;

    private CoordinateText() {
    }

    /**
     * Reads one coordinate.
     *
     * @param text what was typed
     * @param axis which of the two it is
     * @return decimal degrees, north and east positive
     * @throws CoordinateException where it is none, belongs to the other axis, has a sign and a letter, or is out of range
     */
    public static double read(String text, Axis axis) {
        String body = text.strip().toUpperCase(Locale.ROOT).replace('−', '-');
        int sign = 0;
        boolean lettered = false;
        for (char letter : new char[] {'N', 'S', 'E', 'W'}) {
            String rest = without(body, letter);
            if (!rest.equals(body)) {
                if (letter != axis.negative && letter != axis.positive) {
                    throw new CoordinateException(Kind.OTHER_AXIS, text.strip(), axis, String.valueOf(letter));
                }
                sign = letter == axis.negative ? -1 : 1;
                lettered = true;
                body = rest;
                break;
            }
        }
        if (body.startsWith("-") || body.startsWith("+")) {
            if (lettered) {
                throw new CoordinateException(Kind.SIGN_AND_LETTER, text.strip(), axis, "");
            }
            sign = body.charAt(0) == '-' ? -1 : 1;
            body = body.substring(1).strip();
        }
        double size = size(body, axis, text.strip(), lettered);
        if (size > axis.most) {
            throw new CoordinateException(Kind.BEYOND, text.strip(), axis, String.valueOf((int) axis.most));
        }
        return sign < 0 && size != 0 ? -size : size;
    }

    /** Takes a letter off at the beginning or the end, once. */
    private static String without(String body, char letter) {
        if (body.length() > 1 && body.charAt(0) == letter) {
            return body.substring(1).strip();
        }
        int last = body.length() - 1;
        return last > 0 && body.charAt(last) == letter ? body.substring(0, last).strip() : body;
    }

    private static double size(String body, Axis axis, String text, boolean lettered) {
        Matcher packed = PACKED.matcher(body);
        if (lettered && packed.matches() && packed.group(1).length() == axis.digits) {
            return sum(packed, axis, text);
        }
        Matcher decimal = DECIMAL.matcher(body);
        if (decimal.matches()) {
            return number(decimal.group(1));
        }
        Matcher spaced = SPACED.matcher(body);
        if (spaced.matches()) {
            return sum(spaced, axis, text);
        }
        throw new CoordinateException(Kind.NOT_UNDERSTOOD, text, axis,
                axis == Axis.LATITUDE ? "47.305, 47°18.3'N or 471818N" : "-11.905, 11°54.3'W or 0115418W");
    }

    private static double sum(Matcher parts, Axis axis, String text) {
        double minutes = number(parts.group(2));
        double seconds = parts.group(3) == null ? 0 : number(parts.group(3));
        boolean broken = parts.group(3) != null && minutes != Math.rint(minutes);
        if (minutes >= MINUTES || seconds >= MINUTES || broken) {
            throw new CoordinateException(Kind.NO_SIXTIETHS, text, axis, "");
        }
        return number(parts.group(1)) + minutes / MINUTES + seconds / SECONDS;
    }

    private static double number(String digits) {
        return Double.parseDouble(digits.replace(',', '.'));
    }
}
