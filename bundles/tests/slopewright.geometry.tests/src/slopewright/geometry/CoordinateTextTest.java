package slopewright.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.geometry.CoordinateText.Axis;

/** Coordinates as people write them; the degrees by hand: minutes are sixtieths, seconds their sixtieths. */
class CoordinateTextTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"47.3 | 47.3", "47,3 | 47.3", "-47.3 | -47.3", "+47.3° | 47.3", "47.3 N | 47.3", "S47.3 | -47.3",
        "47 18 | 47.3", "47°18' | 47.3", "47°18'N | 47.3", "47 18.5 S | -47.308333333333333",
        "47°18'36\" | 47.31", "47°18′36″N | 47.31",
        "47-18-36N | 47.31", "N 47 18 36.0 | 47.31", "47:18:36 | 47.31", "47d18m36sn | 47.31", "471836N | 47.31", "471836.0S | -47.31",
        "0 | 0", "90 | 90", "0 30 S | -0.5", "-0 30 | -0.5", ".5 | 0.5", "47 deg 18 | 47.3"})
    void latitudes(String text, double expectedDeg) {
        assertEquals(expectedDeg, CoordinateText.read(text, Axis.LATITUDE), 1e-12);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"-11.9 | -11.9", "11.9W | -11.9", "011°54'00\"W | -11.9", "0115400W | -11.9",
        "E1795959 | 179.999722222222222",
        "180 | 180", "179 59 60 | x", "11 54 E | 11.9"})
    void longitudes(String text, String expectedDeg) {
        if (expectedDeg.equals("x")) {
            assertThrows(IllegalArgumentException.class, () -> CoordinateText.read(text, Axis.LONGITUDE));
        } else {
            assertEquals(Double.parseDouble(expectedDeg), CoordinateText.read(text, Axis.LONGITUDE), 1e-12);
        }
    }

    /** The other axis, a sign with a letter, two letters, too much of anything, packed without a letter, the letter of two meanings. */
    @ParameterizedTest
    @ValueSource(strings = {"47.3 E", "W 47 18", "-47.3 S", "N47.3S", "91", "90.0001", "47 60", "47 18 60",
        "47 18.5 30", "471836", "47 18 O",
        "", "north", "4,7,3", "47..3", "NaN", "1e1", "47 -18", "11836N"})
    void whatIsNoLatitude(String text) {
        assertThrows(IllegalArgumentException.class, () -> CoordinateText.read(text, Axis.LATITUDE), text);
    }
}
