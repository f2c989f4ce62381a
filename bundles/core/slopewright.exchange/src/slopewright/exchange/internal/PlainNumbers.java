package slopewright.exchange.internal;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as files carry them: rounded to what a survey can tell, without an exponent and without trailing zeros. */
public final class PlainNumbers {

    private static final int DEGREE_DECIMALS = 9;
    private static final int METRE_DECIMALS = 3;
    private static final int PROPERTY_DECIMALS = 6;

    private PlainNumbers() {
    }

    /** Writes an angle of a position, to a tenth of a millimetre on the ground. */
    public static String degrees(double value) {
        return rounded(value, DEGREE_DECIMALS).toPlainString();
    }

    /** Writes a length in metres, to the millimetre. */
    public static String metres(double value) {
        return rounded(value, METRE_DECIMALS).toPlainString();
    }

    /** Returns a number of a table or a list of facts, to the sixth decimal. */
    public static BigDecimal property(double value) {
        return rounded(value, PROPERTY_DECIMALS);
    }

    /** Writes a number with so many decimals, trailing zeros and all. */
    public static String fixed(double value, int decimals) {
        BigDecimal number = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
        return (number.signum() == 0 ? BigDecimal.ZERO.setScale(decimals) : number).toPlainString();
    }

    /** Rounds a finite number. */
    public static BigDecimal rounded(double value, int decimals) {
        BigDecimal number = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return number.signum() == 0 ? BigDecimal.ZERO : number.scale() < 0 ? number.setScale(0) : number;
    }
}
