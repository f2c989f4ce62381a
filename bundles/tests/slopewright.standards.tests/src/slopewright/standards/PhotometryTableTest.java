package slopewright.standards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Intensities by direction, as Annex 14 Vol I, 9th ed., Fig A2-23 and Vol II, 4th ed., Fig 5-11 print them: that of the smallest contour
 * that encloses the direction, nothing between contours, nothing outside the last one.
 */
class PhotometryTableTest {

    @ParameterizedTest
    @CsvSource({
        // Fig A2-23: a circle of 2 degrees
        "four-unit-row, red, 0, 0, 15000", "four-unit-row, red, 0, -2, 15000", "four-unit-row, red, 1.4, 1.4, 15000",
        // 2.01 degrees off lies outside the circle and inside the contour of 4 by 2.5 degrees
        "four-unit-row, red, 0, -2.01, 10000", "four-unit-row, red, 4, 0, 10000",
        // the ends are half round: at 4 degrees to the side the contour has no height, so 4, 1 lies in the next one
        "four-unit-row, red, 4, 1, 7000", "four-unit-row, red, 6.01, 0, 4000", "four-unit-row, red, 8, 0, 4000",
        "two-unit-row, red, 0, 0, 5000", "two-unit-row, red, 8, 0, 1500",
        // Fig 5-11: ellipses; (3/6)^2 + (3.4/4)^2 = 0.9725, (9/15)^2 + (7.9/10)^2 = 0.9841
        "heliport-sector, green, 3, 0, 9000", "heliport-sector, green, 3, 3.4, 6375", "heliport-sector, red, 9, 7.9, 375"})
    void theSmallestEnclosingContourHolds(String family, String colour, double azimuthDeg, double elevationDeg, double intensityCd) {
        PhotometryTable table = FreshRuleSets.find("icao:9th").orElseThrow().photometry(family, colour, false).orElseThrow();
        assertEquals(OptionalDouble.of(intensityCd), table.intensityCd(azimuthDeg, elevationDeg));
    }

    @ParameterizedTest
    @CsvSource({"four-unit-row, red, 8.01, 0", "four-unit-row, red, 0, 3.51", "heliport-sector, red, 15, 1", "two-unit-row, red, 8, 1"})
    void outsideTheLastContourNothingIsKnown(String family, String colour, double azimuthDeg, double elevationDeg) {
        PhotometryTable table = FreshRuleSets.find("icao:9th").orElseThrow().photometry(family, colour, false).orElseThrow();
        assertTrue(table.intensityCd(azimuthDeg, elevationDeg).isEmpty());
    }

    @Test
    void whatWasNotReadIsNotThere() {
        assertTrue(FreshRuleSets.find("icao:9th").orElseThrow().photometry("four-unit-row", "white", false).isEmpty());
        assertTrue(FreshRuleSets.find("icao:9th").orElseThrow().photometry("t-form", "green", true).isEmpty());
    }

    /** Fig A2-22: by day to 1, 2, 3.7, 4.5 and 5 degrees, by night to 7.5; the extents of the stronger night contours were not read. */
    @ParameterizedTest
    @CsvSource({"1, false, 80000", "2, false, 72000", "3.7, false, 40000", "-4.5, false, 24000", "5, false, 8000", "0, true, 100",
        "7.5, true, 100"})
    void theTFormHasAzimuthLimits(double azimuthDeg, boolean night, double intensityCd) {
        PhotometryTable table = FreshRuleSets.find("icao:9th").orElseThrow().photometry("t-form-abbreviated", "white", night).orElseThrow();
        assertEquals(OptionalDouble.of(intensityCd), table.intensityCd(azimuthDeg, 30));
        assertTrue(table.intensityCd(night ? 7.51 : 5.01, 0).isEmpty());
    }

    /** Art. 117 prints a cone of 4 degrees apex and two ellipses; nothing between them was read for the older edition. */
    @Test
    void theOlderEditionHasTheConesOfANationalText() {
        RuleSet rules = FreshRuleSets.find("icao:5th").orElseThrow();
        PhotometryTable four = rules.photometry("four-unit-row", "red", false).orElseThrow();
        assertEquals(OptionalDouble.of(15000), four.intensityCd(0, 2));
        assertTrue(four.intensityCd(0, 2.01).isEmpty());
        assertEquals(Provenance.SECONDARY, four.citation().provenance());
        assertEquals(OptionalDouble.of(5000), rules.photometry("two-unit-row", "red", false).orElseThrow().intensityCd(0, 0));
        PhotometryTable sector = rules.photometry("heliport-sector", "green", false).orElseThrow();
        assertEquals(OptionalDouble.of(9000), sector.intensityCd(3, 0));
        assertEquals(OptionalDouble.of(375), sector.intensityCd(3.01, 0));
    }

    /** The control total of a figure is the sum of its printed numbers: by day and night of Fig A2-22 224 100 cd and 23.7 degrees. */
    @Test
    void aFigureIsConfirmedByItsTotal() {
        assertEquals(224100 + 23.7, FreshRuleSets.find("icao:9th").orElseThrow().confirmable("table.fig-a2-22").orElseThrow(), 1e-9);
    }

    /** AC 150/5345-28H Fig 3-1 as restated: white twice the red, out to 10 by 4 degrees; the older US edition prints none. */
    @ParameterizedTest
    @CsvSource({"white, 0, 0, 30000", "white, 3.9, 0, 20000", "white, 9.9, 0, 5000", "red, 5.9, 0, 7000", "red, 10, 0, 2500"})
    void theUsCircularHasContoursForBothColours(String colour, double azimuthDeg, double elevationDeg, double intensityCd) {
        PhotometryTable table = FreshRuleSets.find("faa:2022").orElseThrow().photometry("four-unit-row", colour, false).orElseThrow();
        assertEquals(OptionalDouble.of(intensityCd), table.intensityCd(azimuthDeg, elevationDeg));
        assertEquals(Provenance.SECONDARY, table.citation().provenance());
        assertTrue(FreshRuleSets.find("faa:2010").orElseThrow().photometry("four-unit-row", colour, false).isEmpty());
    }
}
