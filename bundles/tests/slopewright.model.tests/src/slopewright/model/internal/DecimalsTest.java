package slopewright.model.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Decimal numbers against what Java reads. */
class DecimalsTest {

    private static final int CASES = 300_000;

    @ParameterizedTest
    @ValueSource(strings = {"0", "-0", "0.0", "-0.0", "+1.5", "1.", ".5", "-.5", "00012.50", "47.3", "-11.9", "9007199254740992",
        "9007199254740993", "9007199254740993.0", "900719925474099.25", "9223372036854775807.5", "9999999999999999999",
        "99999999999999999.99", "18446744073709551615", "0.3", "47.298765432109876", "0.0000000000000000000001",
        "0.00000000000000000000001", "0.00000000000000000012345678901234567890", "123456789012345678901234567890", "1e5", "2.5E-3",
        "179769313486231580000000000000000000000", "4.9e-324"})
    void aNumberIsWhatJavaReads(String text) {
        assertEquals(Double.valueOf(text), Decimals.parse(text));
    }

    @Test
    void numbersOfAnyLengthAreWhatJavaReads() {
        Random random = new Random(20261130);
        for (int i = 0; i < CASES; i++) {
            StringBuilder digits = new StringBuilder();
            int length = 1 + random.nextInt(22);
            random.ints(length, 0, 10).forEach(digits::append);
            int point = random.nextInt(length + 1);
            aNumberIsWhatJavaReads((random.nextBoolean() ? "-" : "") + digits.insert(point, '.'));
        }
    }

    @Test
    void whatJavaWritesIsReadAsItWas() {
        Random random = new Random(17);
        for (int i = 0; i < CASES; i++) {
            double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(9) - 2);
            assertEquals(value, Decimals.parse(new BigDecimal(Double.toString(value)).toPlainString()));
        }
    }

    @Test
    void numbersBesideTheMiddleOfTwoDoublesAreWhatJavaReads() {
        Random random = new Random(3);
        for (int i = 0; i < CASES; i++) {
            double value = random.nextDouble() * Math.pow(10, random.nextInt(19) - 2);
            BigDecimal middle = new BigDecimal(value).add(new BigDecimal(Math.nextUp(value))).divide(BigDecimal.valueOf(2));
            RoundingMode mode = random.nextBoolean() ? RoundingMode.UP : RoundingMode.DOWN;
            aNumberIsWhatJavaReads(middle.round(new MathContext(16 + random.nextInt(4), mode)).toPlainString());
        }
    }
}
