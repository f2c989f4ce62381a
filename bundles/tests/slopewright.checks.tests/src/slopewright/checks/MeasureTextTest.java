package slopewright.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.messages.MessageRenderer;

/** How value, limit and margin stand in print; the texts are rounded by hand, and what decides is never rounded into the other verdict. */
class MeasureTextTest {
    private static final MessageRenderer ENGLISH = MessageRenderer.of(Locale.ENGLISH);
    private static final List<MessageRenderer> ALL = List.of(ENGLISH, MessageRenderer.of(Locale.GERMAN), ENGLISH.inFeet(true),
            ENGLISH.inDecimalDegrees(true));

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"8.996|9|m|8.996 m|9.000 m|-0.004 m", "27958.809|30000|m|27959 m|30000 m|-2041 m",
        "8080.888|8000|m|8080.9 m|8000.0 m|80.9 m", "2.4166667|1.5|deg|2.417\u00b0|1.5\u00b0|0.917\u00b0",
        "0.97|1|min|0.97'|1'|-0.03'", "4|4|''|4|4|0", "10.39|9|m|10.39 m|9.00 m|1.39 m"})
    void aNumberIsRoundedAsItsQuantityIs(double value, double limit, String unit, String valueText, String limitText, String marginText) {
        assertEquals(new MeasureText(valueText, limitText, marginText), MeasureText.of(Measure.atLeast(value, limit, unit), ENGLISH));
    }

    /** A fifth of a millimetre short is at the limit, for the model holds no more; where nothing may pass it is not. */
    @Test
    void whatIsAtItsLimitStandsAsIt() {
        Measure within = Measure.atLeast(8.0998, 8.1, "m");
        assertTrue(within.isMet());
        assertEquals(new MeasureText("8.10 m", "8.10 m", "0.00 m"), MeasureText.of(within, ENGLISH));
        assertTrue(!within.strict().isMet());
        assertEquals(new MeasureText("8.0998 m", "8.1000 m", "-0.0002 m"), MeasureText.of(within.strict(), ENGLISH));
        assertEquals(new MeasureText("8,0998 m", "8,1000 m", "-0,0002 m"), MeasureText.of(within.strict(), ALL.get(1)));
    }

    /** However near to its limit: what is not met differs from it in print, and its margin has a minus and a digit that counts. */
    @ParameterizedTest
    @ValueSource(strings = {"m", "deg", "min", "%", "V", "cd", "kt", ""})
    void nothingThatIsNotMetReadsAsMet(String unit) {
        Random random = new Random(11);
        for (int i = 0; i < 3000; i++) {
            double limit = Math.round(random.nextDouble() * Math.pow(10, random.nextInt(6))) / 8.0;
            Measure measure = Measure.atMost(limit + (2 + random.nextInt(9)) * Math.pow(10, -random.nextInt(7)), limit, unit);
            for (Measure strict : List.of(measure, measure.strict())) {
                for (MessageRenderer renderer : ALL) {
                    MeasureText text = MeasureText.of(strict, renderer);
                    if (!strict.isMet()) {
                        assertNotEquals(text.value(), text.limit(), strict.toString());
                        assertTrue(text.margin().matches("-[0-9.,]*[1-9].*"), strict + " " + text);
                    }
                }
            }
        }
    }

    /** And so with what every rule finds in its cases. */
    @Test
    void noRulePrintsAFindingAsMet() {
        int seen = 0;
        for (RuleCase one : RuleContractTest.cases()) {
            for (Outcome outcome : one.sample().get().outcomes(one.rule())) {
                if (outcome.result() == Result.FAIL && outcome.measure().isPresent()) {
                    seen++;
                    for (MessageRenderer renderer : ALL) {
                        MeasureText text = MeasureText.of(outcome.measure().get(), renderer);
                        assertTrue(!text.value().equals(text.limit()) && text.margin().startsWith("-"), outcome.rule() + " " + text);
                    }
                }
            }
        }
        assertTrue(seen > 100, String.valueOf(seen));
    }
}
