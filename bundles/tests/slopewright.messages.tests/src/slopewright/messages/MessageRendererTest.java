package slopewright.messages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** How numbers, names and lists are written. The expected texts follow from the rules of rounding and of the languages. */
class MessageRendererTest {
    private static final MessageRenderer ENGLISH = MessageRenderer.of(Locale.UK);
    private static final MessageRenderer GERMAN = MessageRenderer.of(Locale.GERMANY);

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"METRES|12.345|12.35 m|12,35 m", "METRES|-0.001|0.00 m|0,00 m",
            "MILLIMETRES|0.0005|0.001 m|0,001 m",
            "WHOLE_METRES|2.5|3 m|3 m", "KILOMETRES|7500|7.50 km|7,50 km", "DEGREES_MINUTES|2.75|2°45'|2°45'",
            "DEGREES|0.565|0.57°|0,57°",
            "WHOLE_DEGREES|15|15°|15°", "WHOLE_DEGREES|7.5|7.5°|7,5°",
            "BEARING|20|020°|020°", "BEARING|359.6|000°|000°", "MINUTES|2.04|2.0'|2,0'", "PERCENT|1.255|1.26 %|1,26 %",
            "COUNT|9999|9999|9999", "COUNT|10000|10,000|10.000", "NUMBER|3.10|3.1|3,1", "NUMBER|-0.001|0|0",
                    "CANDELA|15000|15000 cd|15000 cd",
            "VOLTS|22.5|22.5 V|22,5 V"})
    void aQuantityHasItsUnitAndTheDecimalSignOfTheLanguage(Notation notation, double value, String english, String german) {
        assertEquals(english, ENGLISH.quantity(value, notation));
        assertEquals(german, GERMAN.quantity(value, notation));
    }

    /** 0.3048 m are a foot. */
    @Test
    void lengthsAreWrittenInFeetWhereTheseAreWanted() {
        assertEquals("10.0 ft", ENGLISH.inFeet(true).quantity(3.048, Notation.METRES));
        assertEquals("3.05 m (10.0 ft)", ENGLISH.quantity(3.048, Notation.METRES_AND_FEET));
        assertEquals("3,05 m (10,0 ft)", GERMAN.quantity(3.048, Notation.METRES_AND_FEET));
        assertEquals("10,0 ft", GERMAN.inFeet(true).write(Words.m(3.048)));
    }

    @ParameterizedTest
    @EnumSource(Notation.class)
    void everyNotationWritesEveryNumber(Notation notation) {
        for (double value : new double[] {0, -0.0, 1.5, -2.25, 1e300, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            for (MessageRenderer renderer : List.of(ENGLISH, GERMAN)) {
                String text = renderer.quantity(value, notation);
                assertFalse(text.isBlank());
                assertTrue(text.length() < 40, notation + ": " + text);
            }
        }
    }

    @Test
    void aListEndsWithTheWordOfTheLanguage() {
        Argument three = Words.names(List.of("a", "b", "c"));
        assertEquals("a, b and c", ENGLISH.write(three));
        assertEquals("a, b und c", GERMAN.write(three));
        assertEquals("a", ENGLISH.write(Words.names(List.of("a"))));
        assertEquals("", ENGLISH.write(Words.names(List.of())));
    }

    @Test
    void ofALongListTheOthersAreCounted() {
        List<Argument> five = Stream.of("a", "b", "c", "d", "e").map(Words::name).toList();
        assertEquals("a, b, c, d and e", ENGLISH.write(Words.listed(five, 5)));
        assertEquals("a, b, c, d and 1 other", ENGLISH.write(Words.listed(five, 4)));
        assertEquals("a, b und 3 weitere", GERMAN.write(Words.listed(five, 2)));
    }

    @Test
    void aSentenceWithinASentenceIsRenderedInTheSameLanguage() {
        Message nested = Message.of("outcome.unsolved", Message.of("outcome.not-a-runway"));
        assertTrue(GERMAN.render(nested).contains(GERMAN.render(Message.of("outcome.not-a-runway"))), GERMAN.render(nested));
    }

    /** A key that nobody wrote a sentence for is shown with what would have been put into it. */
    @Test
    void anUnknownKeyLosesNothing() {
        assertEquals("no.such-key [12.00 m, mast]", ENGLISH.render(Message.of("no.such-key", Words.m(12), Words.name("mast"))));
        assertEquals("no-such-word", ENGLISH.write(Words.term("no-such-word")));
    }

    /** A name from a file may hold what ends a line, turns its direction, or looks like a place. */
    @Test
    void aNameEndsNoLineAndFillsNoPlace() {
        assertEquals("a b", ENGLISH.write(Words.name("a\r\nb")));
        assertEquals("a b", ENGLISH.write(Words.name("a\u202eb")));
        String text = ENGLISH.render(Message.of("drawing.obstacle", Words.name("{1} $1 \\"), Words.count(3)));
        assertEquals("{1} $1 \\, 3", text);
    }

    /** One is one in both languages, and none is many: "0 units", as both have it. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"0|0 units on each side|0 Einheiten auf jeder Seite",
            "1|1 unit on each side|1 Einheit auf jeder Seite", "2|2 units on each side|2 Einheiten auf jeder Seite"})
    void aWordGoesWithItsNumber(int count, String english, String german) {
        assertEquals(english, ENGLISH.render(Message.of("missing.units-each-side", Words.count(count))));
        assertEquals(german, GERMAN.render(Message.of("missing.units-each-side", Words.count(count))));
        assertEquals(english, ENGLISH.render(Message.of("missing.units-each-side", Words.name(String.valueOf(count)))));
    }

    /** Every text of the catalogues stands in marks, and what is put into it does not, so that what came from elsewhere shows. */
    @Test
    void theMarkedLanguageShowsWhatIsNotOfTheCatalogues() {
        MessageRenderer marked = MessageRenderer.of(MessageRenderer.MARKED);
        assertEquals("0\u27e6 \u27e7\u27e6units\u27e7\u27e6 on each side\u27e7",
                marked.render(Message.of("missing.units-each-side", Words.count(0))));
        assertEquals("mast\u27e6 and \u27e7tree", marked.write(Words.names(List.of("mast", "tree"))));
    }

    @Test
    void messagesAreValues() {
        assertEquals(Message.of("list", Words.m(1)), Message.of("list", Words.m(1)));
        assertThrows(NullPointerException.class, () -> Message.of(null));
        assertThrows(UnsupportedOperationException.class, () -> Message.of("list", Words.m(1)).arguments().clear());
        Map<String, String> patterns = ENGLISH.patterns();
        assertThrows(UnsupportedOperationException.class, () -> patterns.put("list", ""));
    }

    @Test
    void aLanguageWithoutCatalogueIsEnglish() {
        assertEquals(ENGLISH, MessageRenderer.of(Locale.FRENCH));
        assertEquals(Locale.GERMAN, GERMAN.language());
    }
}
