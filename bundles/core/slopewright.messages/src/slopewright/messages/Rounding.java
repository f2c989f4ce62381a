package slopewright.messages;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * How far a number is rounded in print; one rule a quantity, and one above all: a number that decides is never rounded onto its limit or
 * to nothing, however near it lies. Coordinates and what was typed are no matter of it: they stand as the model keeps them.
 */
public final class Rounding {

    /** From here on a length has one decimal fewer, metres: nobody sites to the centimetre over a kilometre. */
    public static final double FAR_M = 1000;
    /** From here on a length has no decimals, metres. */
    public static final double VERY_FAR_M = 10_000;
    /** The finest digit in print, which no model keeps: a length to the micrometre, an angle to the millionth of a degree. */
    public static final int MOST_DECIMALS = 6;
    /** What comes of computing in doubles, not of a difference. */
    private static final double NOTHING = 1e-9;

    private Rounding() {
    }

    /**
     * Returns how many decimals a length has.
     *
     * @param metres the length
     * @param usual  how many it has where it is short
     * @return at most one from {@link #FAR_M} on, none from {@link #VERY_FAR_M} on
     */
    public static int ofLength(double metres, int usual) {
        return Math.abs(metres) < FAR_M ? usual : Math.abs(metres) < VERY_FAR_M ? Math.min(usual, 1) : 0;
    }

    /**
     * Returns how many decimals tell a number from another that it does not equal.
     *
     * @param value    the number
     * @param other    the other one, such as its limit, or nought
     * @param decimals how many decimals it has otherwise
     * @param same     how near the two count as equal, in their unit: what a model can hold, or nought
     * @return as many, or the fewest more with which the two differ in print, {@link #MOST_DECIMALS} at most
     */
    public static int telling(double value, double other, int decimals, double same) {
        int telling = decimals;
        while (telling < MOST_DECIMALS && isApart(value, other, same) && rounded(value, telling).compareTo(rounded(other, telling)) == 0) {
            telling++;
        }
        return telling;
    }

    /** Returns whether two numbers differ by more than counts as equal; what is no finite number differs from nothing. */
    public static boolean isApart(double value, double other, double same) {
        return Double.isFinite(value) && Double.isFinite(other) && Math.abs(value - other) > same + NOTHING;
    }

    private static BigDecimal rounded(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    }
}
