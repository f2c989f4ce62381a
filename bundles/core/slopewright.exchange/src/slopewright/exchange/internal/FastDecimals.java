package slopewright.exchange.internal;

import java.nio.charset.StandardCharsets;

import slopewright.geometry.Decimals;

/** Reads decimal numbers from bytes without an object for a number; exact where digits and power of ten are small, else the slow way. */
public final class FastDecimals {

    private static final double[] POWERS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17,
            1e18,
            1e19, 1e20, 1e21, 1e22};
    private static final long MOST_EXACT = 1L << 53;

    private FastDecimals() {
    }

    /**
     * Reads a number.
     *
     * @param text the bytes
     * @param from first byte
     * @param to   byte after the last
     * @return the number, the same as {@link Double#parseDouble} gives; NaN where it is none
     */
    public static double parse(byte[] text, int from, int to) {
        int at = from;
        boolean negative = at < to && text[at] == '-';
        if (negative) {
            at++;
        }
        long digits = 0;
        int decimals = 0;
        int count = 0;
        boolean point = false;
        for (; at < to; at++) {
            int c = text[at];
            if (c >= '0' && c <= '9') {
                digits = digits * 10 + c - '0';
                count++;
                decimals += point ? 1 : 0;
            } else if (c == '.' && !point) {
                point = true;
            } else {
                return slow(text, from, to);
            }
        }
        if (count == 0 || count > 18 || digits > MOST_EXACT) {
            return slow(text, from, to);
        }
        double value = digits / POWERS[decimals];
        return negative ? -value : value;
    }

    private static double slow(byte[] text, int from, int to) {
        try {
            return Decimals.parse(new String(text, from, to - from, StandardCharsets.UTF_8));
        } catch (IllegalArgumentException e) {
            return Double.NaN;
        }
    }
}
