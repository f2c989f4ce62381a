package slopewright.geometry;

/** Reads decimal numbers as people and files write them, and nothing else: no {@code NaN}, no hexadecimal, no type suffix. */
public final class Decimals {

    private static final int MOST_OF_EXPONENT = 3;

    private Decimals() {
    }

    /**
     * Reads a decimal number.
     *
     * @param text the text, with a point as the decimal mark
     * @return the number, finite
     * @throws DecimalException where the text is no finite decimal number
     */
    public static double parse(String text) {
        return parse(text.strip(), text);
    }

    /** Returns whether a text is a sign or none, digits with a point among them or none, and an exponent of up to three digits or none. */
    private static boolean isDecimal(String text) {
        int at = sign(text, 0);
        int point = digits(text, at);
        int before = point - at;
        boolean pointed = point < text.length() && text.charAt(point) == '.';
        int end = pointed ? digits(text, point + 1) : point;
        int after = pointed ? end - point - 1 : 0;
        if (before + after == 0) {
            return false;
        }
        if (end < text.length() && (text.charAt(end) == 'e' || text.charAt(end) == 'E')) {
            int first = sign(text, end + 1);
            end = digits(text, first);
            if (end == first || end - first > MOST_OF_EXPONENT) {
                return false;
            }
        }
        return end == text.length();
    }

    private static int sign(String text, int at) {
        return at < text.length() && (text.charAt(at) == '+' || text.charAt(at) == '-') ? at + 1 : at;
    }

    private static int digits(String text, int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
        return at;
    }

    static double parse(String number, String shown) {
        if (!isDecimal(number)) {
            throw new DecimalException(shown.strip(), false);
        }
        double value = Double.parseDouble(number);
        if (!Double.isFinite(value)) {
            throw new DecimalException(shown.strip(), true);
        }
        return value;
    }
}
