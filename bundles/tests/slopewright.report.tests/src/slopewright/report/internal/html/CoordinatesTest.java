package slopewright.report.internal.html;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sexagesimal arithmetic: 60 minutes a degree, 60 seconds a minute, rounded once to a thousandth of a second. */
class CoordinatesTest {

    /** 47.3 = 47 + 18/60; 0.5125 x 60 = 30.75, 0.75 x 60 = 45; the last two lie half a thousandth off and must carry over. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {"47.3 | 47°18'00.000\" N", "-0.5125 | 0°30'45.000\" S",
            "0 | 0°00'00.000\" N", "47.29999999999 | 47°18'00.000\" N", "12.01666666660 | 12°01'00.000\" N"})
    void latitudesInEnglish(double degrees, String printed) {
        assertEquals(printed, Coordinates.latitude(new ReportWords(Locale.ENGLISH), degrees));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {"-11.9 | 11°54'00,000\" W", "8.0025 | 8°00'09,000\" O",
            "179.9999999999 | 180°00'00,000\" O"})
    void longitudesInGerman(double degrees, String printed) {
        assertEquals(printed, Coordinates.longitude(new ReportWords(Locale.GERMAN), degrees));
    }
}
