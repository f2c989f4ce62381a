package slopewright.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;

/** What is a decimal number, against a pattern that says so. */
class DecimalFormTest {

    private static final Pattern DECIMAL = Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d{1,3})?");
    private static final String LETTERS = "0123456789..+-eE x\u0661dfN";
    private static final int CASES = 400_000;
    private static final int LONGEST = 7;

    private static String read(String text) {
        try {
            return String.valueOf(Decimals.parse(text));
        } catch (IllegalArgumentException e) {
            return "none";
        }
    }

    @Test
    void numbersAreThoseOfThePattern() {
        Random random = new Random(16);
        int numbers = 0;
        for (int i = 0; i < CASES; i++) {
            StringBuilder text = new StringBuilder();
            for (int k = random.nextInt(LONGEST); k >= 0; k--) {
                text.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
            }
            String bare = text.toString().strip();
            boolean isNumber = DECIMAL.matcher(bare).matches() && Double.isFinite(Double.parseDouble(bare));
            assertEquals(isNumber ? String.valueOf(Double.parseDouble(bare)) : "none", read(text.toString()), text.toString());
            numbers += isNumber ? 1 : 0;
        }
        assertTrue(numbers > CASES / 20, numbers + " numbers");
    }
}
