package slopewright.messages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** One rule of rounding a quantity, and no number that decides rounded onto its limit. The expected texts are rounded by hand. */
class RoundingTest {
    private static final MessageRenderer ENGLISH = MessageRenderer.of(Locale.UK);
    private static final MessageRenderer GERMAN = MessageRenderer.of(Locale.GERMANY);

    /** To the centimetre below a kilometre, to the decimetre below ten, whole from there on; in feet a digit fewer. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"330.462|330.46 m|330,46 m|1084.2 ft", "999.994|999.99 m|999,99 m|3280.8 ft",
        "1341.53|1341.5 m|1341,5 m|4401.3 ft", "-1341.53|-1341.5 m|-1341,5 m|-4401.3 ft", "9999.94|9999.9 m|9999,9 m|32808.2 ft",
        "27958.809|27959 m|27959 m|91728 ft", "32186.88|32187 m|32187 m|105600 ft", "0.004|0.00 m|0,00 m|0.0 ft"})
    void aLengthHasNoDigitThatNobodySitesTo(double metres, String english, String german, String feet) {
        assertEquals(english, ENGLISH.quantity(metres, Notation.METRES));
        assertEquals(german, GERMAN.quantity(metres, Notation.METRES));
        assertEquals(feet, ENGLISH.inFeet(true).quantity(metres, Notation.METRES));
    }

    /** A margin of four millimetres is no margin of nothing, nor is one of a thousandth of that. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"8.654|8.65 m|8,65 m", "0.004|0.004 m|0,004 m", "-0.0004|-0.0004 m|-0,0004 m",
        "0.000004|0.000004 m|0,000004 m", "0|0.00 m|0,00 m", "1e-12|0.00 m|0,00 m"})
    void aMarginIsNotRoundedToNothing(double metres, String english, String german) {
        assertEquals(english, ENGLISH.quantity(metres, Notation.MARGIN));
        assertEquals(german, GERMAN.quantity(metres, Notation.MARGIN));
    }

    @Test
    void aValueStandsApartFromTheLimitInItsSentence() {
        Message message = Message.of("EYE-01.compared", Words.mFt(8.096), Words.deg(2.75), Words.mFt(8.1));
        assertTrue(ENGLISH.render(message).contains("8.096 m") && ENGLISH.render(message).contains("8.100 m"), ENGLISH.render(message));
        assertTrue(GERMAN.render(message).contains("8,096 m") && GERMAN.render(message).contains("8,100 m"), GERMAN.render(message));
    }

    /** Half a millimetre is no difference: the model does not hold it. */
    @Test
    void whatTheModelCannotTellApartStandsAlike() {
        Message message = Message.of("EYE-01.compared", Words.mFt(8.0998), Words.deg(2.75), Words.mFt(8.1));
        assertTrue(ENGLISH.render(message).contains("8.10 m (26.6 ft)"), ENGLISH.render(message));
        assertTrue(!ENGLISH.render(message).contains("8.0998"), ENGLISH.render(message));
    }

    /** Any two numbers of a kind that differ by more than the model holds differ in print, in both languages and units. */
    @ParameterizedTest
    @EnumSource(value = Notation.class, mode = EnumSource.Mode.EXCLUDE, names = {"COUNT", "BEARING", "YEAR", "EXACT"})
    void twoNumbersOfASentenceStandApart(Notation notation) {
        Random random = new Random(7);
        for (int i = 0; i < 2000; i++) {
            double first = Math.round(random.nextDouble() * 4000 * Math.pow(10, random.nextInt(4) - 1)) / 1000.0;
            double second = first + (random.nextBoolean() ? 1 : -1) * (notation.same() + 2e-6) * Math.pow(10, random.nextInt(4));
            for (MessageRenderer renderer : new MessageRenderer[] {ENGLISH, GERMAN, ENGLISH.inFeet(true),
                ENGLISH.inDecimalDegrees(true)}) {
                String text = renderer.render(Message.of("no.such-sentence", Words.quantity(first, notation),
                        Words.quantity(second, notation)));
                String[] parts = text.substring(text.indexOf('[') + 1, text.indexOf(']')).split(", ");
                assertNotEquals(parts[0], parts[1], notation + " of " + first + " and " + second);
            }
        }
    }
}
