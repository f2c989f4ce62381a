package slopewright.standards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The tables cell by cell against a second copy of the printed ones; each case file names its source. */
class PrintedTablesTest {

    private final RuleSet older = FreshRuleSets.find("icao:5th").orElseThrow();
    private final RuleSet later = FreshRuleSets.find("icao:9th").orElseThrow();
    private final RuleSet easa = FreshRuleSets.find("easa").orElseThrow();
    private final RuleSet faa = FreshRuleSets.find("faa").orElseThrow();
    private final RuleSet casa = FreshRuleSets.find("casa").orElseThrow();

    @ParameterizedTest
    @CsvFileSource(resources = "/cases/wheel-clearance.csv")
    void wheelClearances(double fromM, double belowM, double desiredM, double minimumM, Double lightAeroplaneM) {
        for (RuleSet rules : List.of(older, later, easa, casa)) {
            WheelClearanceTable table = rules.wheelClearance().orElseThrow();
            for (double height : new double[] {fromM, (fromM + belowM) / 2, belowM - 0.0011}) {
                WheelClearanceTable.Group group = table.group(height).orElseThrow();
                assertEquals(new WheelClearanceTable.Group(fromM, belowM, desiredM, minimumM, Optional.ofNullable(lightAeroplaneM)), group);
            }
        }
    }

    /**
     * 3, 5 and 8 m entered in feet and kept in millimetres fall into the band above, which asks for more: 9.8425 ft are 2.999994 m, 16.404
     * ft
     * are 4.99994 m, 26.247 ft are 8.000086 m, 26.246 ft are 7.999781 m; 3.28 ft a metre would be 2.99923 m. A clear centimetre less does
     * not.
     */
    @ParameterizedTest
    @CsvSource({"9.8425, 3", "9.84, 3", "16.404, 5", "26.247, 8", "26.246, 8", "9.81, 0", "16.37, 3", "26.21, 5"})
    void anEdgeEnteredInFeetFallsIntoTheBandAbove(double feet, double fromM) {
        assertEquals(fromM, older.wheelClearance().orElseThrow().group(feet * 0.3048).orElseThrow().fromM());
    }

    /** 800, 1200 and 2400 m of landing distance: 2624.67 ft are 799.9994 m, 3937.008 ft are 1200.00004 m, 7874 ft are 2399.9952 m. */
    @ParameterizedTest
    @CsvSource({"2624.67, 250", "3937.008, 300", "7874.013, 400", "7874, 300", "2624.6, 150"})
    void aLandingDistanceEnteredInFeetFallsIntoTheBandAbove(double feet, double distanceM) {
        assertEquals(distanceM, older.aimingPoint().orElseThrow().distanceM(feet * 0.3048));
    }

    @Test
    void wheelClearancesEndAtFourteenMetres() {
        WheelClearanceTable table = older.wheelClearance().orElseThrow();
        assertEquals(4, table.groups().size());
        assertTrue(table.group(14).isEmpty());
        assertTrue(table.group(-0.1).isEmpty());
        assertTrue(table.group(Double.NaN).isEmpty());
    }

    @Test
    void wheelClearancesAreKnownAsWellAsTheirText() {
        assertEquals(Provenance.PUBLISHED, older.wheelClearance().orElseThrow().citation().provenance());
        assertEquals(Provenance.FROM_MEMORY, easa.wheelClearance().orElseThrow().citation().provenance(), "Table M-1 was not read");
        assertEquals(Provenance.FROM_MEMORY, casa.wheelClearance().orElseThrow().citation().provenance(), "stands in for an unread text");
        assertTrue(faa.wheelClearance().isEmpty());
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/cases/surface-5th.csv")
    void surfacesOfTheOlderEdition(boolean instrument, int code, double innerEdgeM, double innerEdgeTFormM, double startM,
            double divergencePercent, double lengthM, double lengthTFormM, Double tFormDeg, Double belowAFourDeg, Double belowATwoDeg) {
        SurfaceTable.Row row = older.surface().orElseThrow().row(instrument, code).orElseThrow();
        for (String family : List.of("four-unit-row", "two-unit-row")) {
            assertEquals(innerEdgeM, row.innerEdgeM(family));
            assertEquals(lengthM, row.lengthM(family));
        }
        for (String family : List.of("t-form", "t-form-abbreviated")) {
            assertEquals(innerEdgeTFormM, row.innerEdgeM(family), "note a");
            assertEquals(lengthTFormM, row.lengthM(family), "note b");
            assertSlope(SurfaceTable.SlopeBasis.FIXED, tFormDeg, row.slope(family));
        }
        assertEquals(startM, row.startM());
        assertEquals(divergencePercent, row.divergencePercent());
        assertSlope(SurfaceTable.SlopeBasis.BELOW_LOWEST_SETTING, belowAFourDeg, row.slope("four-unit-row"));
        assertSlope(SurfaceTable.SlopeBasis.BELOW_LOWEST_SETTING, belowATwoDeg, row.slope("two-unit-row"));
        assertEquals(List.of(Provenance.PUBLISHED, Provenance.PUBLISHED, Provenance.PUBLISHED),
                List.of(row.dimensionProvenance(), row.lengthProvenance(), row.slopeProvenance()));
    }

    /** Annex 14 Vol I 9th ed. Table 5-3, Fig 5-21: the older figures; the start is D1 + 30 m at non-instrument code 1, else D1 + 60 m. */
    @ParameterizedTest
    @CsvFileSource(resources = "/cases/surface-5th.csv")
    void surfacesOfTheNinthEdition(boolean instrument, int code, double innerEdgeM, double innerEdgeTFormM, double olderStartM,
            double divergencePercent, double lengthM, double lengthTFormM, Double tFormDeg, Double belowAFourDeg, Double belowATwoDeg) {
        assertTrue(later.surface().orElseThrow().fromIndicator());
        SurfaceTable.Row row = later.surface().orElseThrow().row(instrument, code).orElseThrow();
        assertEquals(!instrument && code == 1 ? 30 : 60, row.startM());
        assertEquals(List.of(innerEdgeM, lengthM, divergencePercent),
                List.of(row.innerEdgeM("four-unit-row"), row.lengthM("two-unit-row"), row.divergencePercent()));
        if (tFormDeg != null) {
            assertEquals(List.of(innerEdgeTFormM, lengthTFormM), List.of(row.innerEdgeM("t-form"), row.lengthM("t-form-abbreviated")));
        }
        assertSlope(SurfaceTable.SlopeBasis.FIXED, tFormDeg, row.slope("t-form"));
        assertSlope(SurfaceTable.SlopeBasis.BELOW_LOWEST_SETTING, belowAFourDeg, row.slope("four-unit-row"));
        assertSlope(SurfaceTable.SlopeBasis.BELOW_LOWEST_SETTING, belowATwoDeg, row.slope("two-unit-row"));
        assertEquals(List.of(Provenance.PUBLISHED, Provenance.PUBLISHED, Provenance.PUBLISHED),
                List.of(row.dimensionProvenance(), row.lengthProvenance(), row.slopeProvenance()));
    }

    @Test
    void theOlderSurfaceStartsFromTheThreshold() {
        assertFalse(older.surface().orElseThrow().fromIndicator());
        assertEquals(8, older.surface().orElseThrow().rows().size());
        assertTrue(older.surface().orElseThrow().row(false, 5).isEmpty());
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/cases/surface-easa.csv")
    void surfacesThatStartFromTheIndicator(boolean instrument, int code, double innerEdgeM, double startM, double divergencePercent,
            double lengthM, Double belowAFourDeg, Double belowATwoDeg, String lengthProvenance) {
        SurfaceTable.Row row = easa.surface().orElseThrow().row(instrument, code).orElseThrow();
        assertTrue(easa.surface().orElseThrow().fromIndicator());
        assertEquals(innerEdgeM, row.innerEdgeM("four-unit-row"));
        assertEquals(startM, row.startM());
        assertEquals(divergencePercent, row.divergencePercent());
        assertEquals(lengthM, row.lengthM("two-unit-row"));
        assertSlope(SurfaceTable.SlopeBasis.BELOW_LOWEST_SETTING, belowAFourDeg, row.slope("four-unit-row"));
        assertSlope(SurfaceTable.SlopeBasis.BELOW_LOWEST_SETTING, belowATwoDeg, row.slope("two-unit-row"));
        assertEquals(Provenance.FROM_MEMORY, row.slopeProvenance());
        assertEquals(Provenance.PUBLISHED, row.dimensionProvenance());
        assertEquals(Provenance.of(lengthProvenance), row.lengthProvenance());
        assertTrue(row.slope("t-form").isEmpty(), "easa carries no T form");
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/cases/surface-heliport.csv")
    void surfacesAtHeliports(boolean nonPrecision, double startM, double divergencePercent, double lengthM, double belowAFourDeg,
            double belowAHeliportDeg, double belowATwoDeg) {
        for (RuleSet rules : List.of(older, later)) {
            HeliportSurfaceTable table = rules.heliportSurface().orElseThrow();
            assertEquals(Provenance.PUBLISHED, table.citation().provenance());
            Map<String, Double> belowDeg = Map.of("four-unit-row", belowAFourDeg, "heliport-sector", belowAHeliportDeg, "two-unit-row",
                    belowATwoDeg);
            assertEquals(new HeliportSurfaceTable.Row(nonPrecision, startM, divergencePercent, lengthM, belowDeg),
                    table.row(nonPrecision).orElseThrow());
        }
        assertTrue(easa.heliportSurface().isEmpty(), "heliports are in a text that was not read");
        assertTrue(faa.heliportSurface().isEmpty());
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/cases/aiming-point.csv")
    void aimingPointMarkings(double landingDistanceM, double distanceM) {
        AimingPointTable table = older.aimingPoint().orElseThrow();
        assertEquals(distanceM, table.distanceM(landingDistanceM));
        assertEquals(Provenance.PUBLISHED, table.citation().provenance());
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN})
    void noMarkingWithoutALandingDistance(double landingDistanceM) {
        assertThrows(IllegalArgumentException.class,
                () -> older.aimingPoint().orElseThrow().distanceM(landingDistanceM));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/cases/crossing-heights.csv")
    void crossingHeights(int number, double cockpitToWheelFt, double crossingHeightFt, double aboveFt, double belowFt) {
        CrossingHeightTable table = faa.crossingHeight().orElseThrow();
        assertEquals(new CrossingHeightTable.Group(number, cockpitToWheelFt, crossingHeightFt, aboveFt, belowFt),
                table.group(number).orElseThrow());
        assertEquals(Provenance.FROM_MEMORY, table.citation().provenance());
        assertEquals(4, table.groups().size());
        assertTrue(table.group(5).isEmpty());
    }

    private static void assertSlope(SurfaceTable.SlopeBasis basis, Double deg, Optional<SurfaceTable.Slope> found) {
        assertEquals(Optional.ofNullable(deg).map(angle -> new SurfaceTable.Slope(basis, angle)), found);
    }
}
