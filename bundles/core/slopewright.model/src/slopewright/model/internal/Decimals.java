package slopewright.model.internal;

import java.math.BigInteger;

/**
 * Reads decimal numbers to the nearest double, as {@link Double#valueOf(String)} does and several times as fast where they have no
 * exponent. Most of a large project is numbers of sixteen digits, for which Java counts with numbers of any length. Here they are
 * multiplied with a power of ten of 128 bits; where that leaves open how to round, Java is asked (D. Lemire, Number Parsing at a Gigabyte
 * per Second, 2021).
 */
final class Decimals {

    /** So many digits fit into 64 bits. */
    private static final int MOST_DIGITS = 19;
    /** Powers of ten up to this are doubles. */
    private static final int MOST_PLACES = 22;
    /** Whole numbers up to this are doubles. */
    private static final long MOST_EXACT = 1L << 53;
    /** Of 64 bits, those below the 53 of a double; half of what they can hold. */
    private static final int BELOW_BITS = 11;
    private static final long BELOW = (1L << BELOW_BITS) - 1;
    private static final long HALF = 1L << BELOW_BITS - 1;

    private static final double[] TENS = new double[MOST_PLACES + 1];
    /** 10 to the power of minus the index times 2 to the power of {@link #SHIFT}, the next larger number of 128 bits: its two halves. */
    private static final long[] UPPER = new long[MOST_PLACES + 1];
    private static final long[] LOWER = new long[MOST_PLACES + 1];
    private static final int[] SHIFT = new int[MOST_PLACES + 1];

    static {
        for (int places = 0; places <= MOST_PLACES; places++) {
            BigInteger ten = BigInteger.TEN.pow(places);
            TENS[places] = ten.doubleValue();
            SHIFT[places] = 2 * Long.SIZE - 1 + ten.bitLength();
            BigInteger power = BigInteger.ONE.shiftLeft(SHIFT[places]).divide(ten).add(BigInteger.ONE);
            UPPER[places] = power.shiftRight(Long.SIZE).longValue();
            LOWER[places] = power.longValue();
        }
    }

    private Decimals() {
    }

    /**
     * Reads a number.
     *
     * @param text a decimal number, as {@link ProjectHandler#isNumber} lets pass
     * @return the double next to it
     */
    static Double parse(String text) {
        boolean negative = text.charAt(0) == '-';
        long digits = 0;
        int count = 0;
        int point = -1;
        for (int at = negative ? 1 : 0; at < text.length(); at++) {
            char letter = text.charAt(at);
            if (letter == '.' && point < 0) {
                point = at;
            } else if (letter >= '0' && letter <= '9' && count < MOST_DIGITS) {
                digits = 10 * digits + (letter - '0');
                count += digits == 0 ? 0 : 1;
            } else {
                return Double.valueOf(text);
            }
        }
        int places = point < 0 ? 0 : text.length() - point - 1;
        boolean isExact = digits >= 0 && digits <= MOST_EXACT;
        if (places > MOST_PLACES || places == 0 && !isExact) {
            return Double.valueOf(text);
        }
        // of two exact numbers one division rounds once
        double value = isExact ? digits / TENS[places] : nearest(digits, places);
        return Double.isNaN(value) ? Double.valueOf(text) : negative ? Double.valueOf(-value) : Double.valueOf(value);
    }

    /** Returns the double next to so many digits with so many of them behind the point; no number where that is not certain. */
    private static double nearest(long digits, int places) {
        int zeros = Long.numberOfLeadingZeros(digits);
        long factor = digits << zeros;
        long low = factor * UPPER[places];
        long middle = low + multiplyHigh(factor, LOWER[places]);
        long upper = multiplyHigh(factor, UPPER[places]) + (Long.compareUnsigned(middle, low) < 0 ? 1 : 0);
        int shifted = Long.numberOfLeadingZeros(upper);
        upper = upper << shifted | (shifted == 0 ? 0 : middle >>> Long.SIZE - shifted);
        long below = upper & BELOW;
        // what was left out of the product is less than two of the next 64 bits, and changes nothing but a half
        if (below == HALF || below == HALF - 1) {
            return Double.NaN;
        }
        long bits = (upper >>> BELOW_BITS) + (below > HALF ? 1 : 0);
        return Math.scalb((double) bits, BELOW_BITS + 2 * Long.SIZE - shifted - zeros - SHIFT[places]);
    }

    /** Returns the upper half of the product of two numbers without sign. */
    private static long multiplyHigh(long a, long b) {
        return Math.multiplyHigh(a, b) + (a >> Long.SIZE - 1 & b) + (b >> Long.SIZE - 1 & a);
    }
}
