package slopewright.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Conversions against exact values and text forms against what a person would write. */
class AnglesTest {

    /** Exact by definition: 60 minutes make a degree. */
    @ParameterizedTest
    @CsvSource({"2, 50, 2.8333333333333333", "3, 0, 3", "0, 2, 0.0333333333333333", "1, 54, 1.9", "2, 7.5, 2.125"})
    void degreesAndMinutesMakeDecimalDegrees(int degrees, double minutes, double expectedDeg) {
        assertEquals(expectedDeg, Angles.ofDegreesMinutes(degrees, minutes), 1e-12);
        assertEquals(expectedDeg * 60, Angles.degToMinutes(expectedDeg), 1e-12);
        assertEquals(minutes / 60, Angles.minutesToDeg(minutes), 1e-15);
    }

    /** Cotangents to four decimals from a printed table of trigonometric functions; the tangent of 45 degrees is exact. */
    @ParameterizedTest
    @CsvSource({"2.8, 20.4465", "2.716666666666667, 21.0747", "3, 19.0811", "45, 1.0000"})
    void cotangentsAgreeWithTables(double angleDeg, double cotangent) {
        assertEquals(cotangent, Angles.cotDeg(angleDeg), 0.00005);
        assertEquals(1, Angles.cotDeg(angleDeg) * Angles.tanDeg(angleDeg), 1e-12);
    }

    @Test
    void elevationIsTheAngleOverTheHorizon() {
        assertEquals(45, Angles.elevationDeg(10, 10), 1e-12);
        assertEquals(-45, Angles.elevationDeg(-10, 10), 1e-12);
        assertEquals(90, Angles.elevationDeg(10, 0), 1e-12);
        assertEquals(3, Angles.elevationDeg(52.40777928, 1000), 1e-9, "1000 m times the tangent of 3 degrees");
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 0", "360, 0, 0", "-90, 270, -90", "725, 5, 5", "180, 180, 180", "-180, 180, 180", "181, 181, -179", "-1e-17, 0, 0"})
    void bearingsAndTurnsStayInTheirRange(double degrees, double bearing, double turn) {
        assertEquals(bearing, Angles.normaliseBearingDeg(degrees), 1e-12);
        assertEquals(turn, Angles.normaliseTurnDeg(degrees), 1e-12);
        assertTrue(Angles.normaliseBearingDeg(degrees) < 360);
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '"', value = {"2.8333333333333335, 2°50'", "3, 3°00'", "1.9, 1°54'", "2.125, 2°07.5'", "-0.5, -0°30'",
        "2.9999999, 3°00'", "-1e-9, 0°00'", "0.0333333333333333, 0°02'", "11.998, 11°59.9'", "11.9999, 12°00'"})
    void anglesAreWrittenInDegreesAndMinutes(double degrees, String text) {
        assertEquals(text, Angles.format(degrees));
    }
}
