package slopewright.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lengths and plain numbers as people write them. */
class LengthsTest {

    /** The international foot is 0.3048 m exactly, the nautical mile 1852 m exactly, the statute mile 5280 feet. */
    @Test
    void unitsAreTheInternationalOnes() {
        assertEquals(0.3048, Lengths.METRES_PER_FOOT);
        assertEquals(1852, Lengths.METRES_PER_NAUTICAL_MILE);
        assertEquals(1609.344, Lengths.METRES_PER_STATUTE_MILE, 1e-9);
        assertEquals(15.24, Lengths.feetToMetres(50), 1e-12);
        assertEquals(50, Lengths.metresToFeet(15.24), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"12.5, 12.5", "12.5m, 12.5", "12.5 m, 12.5", "50ft, 15.24", "50 FT, 15.24", "' 1e3 ', 1000", "-2, -2", "+2, 2", ".5, 0.5",
        "5., 5", "-10ft, -3.048"})
    void lengthsAreReadWithAndWithoutUnit(String text, double metres) {
        assertEquals(metres, Lengths.parse(text), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "m", "ft", "NaN", "Infinity", "1,5", "0x10", "1d", "1f", "1 2", "12 km", "1.2.3", "1e", "--1",
        "5 ft m", "1e400", "\u0661\u0662", "12'"})
    void whatIsNoLengthIsRefusedByName(String text) {
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class, () -> Lengths.parse(text));
        assertTrue(refused.getMessage().contains("'" + text.strip() + "'"), refused.getMessage());
    }

    @ParameterizedTest
    @CsvSource({"3, 3", "' -0.25 ', -0.25", "2.5E-3, 0.0025"})
    void decimalsAreRead(String text, double value) {
        assertEquals(value, Decimals.parse(text), 0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"12m", "50ft", "nan", "1e999", "", "three"})
    void whatIsNoDecimalIsRefusedByName(String text) {
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class, () -> Decimals.parse(text));
        assertTrue(refused.getMessage().contains("'" + text + "'"), refused.getMessage());
    }
}
