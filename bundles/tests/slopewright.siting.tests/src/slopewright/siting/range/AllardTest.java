package slopewright.siting.range;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.geometry.Lengths;

/** Allard's law and the angles between lights against closed solutions and tables. */
class AllardTest {

    /** ln 20 = 2.995732: the 3 of 3 / V, for a contrast of 5 per cent. */
    @ParameterizedTest
    @CsvSource({"10000, 5, 2.995732274e-4", "800, 5, 3.744665342e-3", "10000, 2, 3.912023005e-4", "Infinity, 5, 0"})
    void extinctionOfAVisibility(double visibilityM, double contrast, double expected) {
        assertEquals(expected, Allard.extinctionPerM(visibilityM, contrast), 1e-12);
    }

    /**
     * A range chosen first and the intensity computed from it: I = E d squared exp(d x extinction). With extinction 0.0003 and 5000 m:
     * 1e-4 x 25e6 x e to 1.5 = 11204.2227 cd; with 0.003 and 1000 m: 8e-7 x 1e6 x e to 3 = 16.0684295 cd.
     */
    @ParameterizedTest
    @CsvSource({"11204.222676, 0.0003, 1e-4, 5000", "16.068429539, 0.003, 8e-7, 1000", "2500, 0, 1e-4, 5000"})
    void rangesOfKnownSolutions(double intensityCd, double extinction, double thresholdLx, double rangeM) {
        Allard.Solution found = Allard.range(intensityCd, extinction, thresholdLx);
        assertEquals(rangeM, found.rangeM(), Allard.STOP_WIDTH_M);
        assertTrue(Allard.illuminanceLx(intensityCd, extinction, found.rangeM()) >= thresholdLx * (1 - 1e-12), "on the safe side");
        assertTrue(found.stopRule().contains(extinction == 0 ? "without iteration" : "0.001 m"));
        assertEquals(extinction == 0, found.steps() == 0);
    }

    /**
     * The intensities that COLREGS Annex I, 8 and 33 CFR 84 print for lights of ships: E = 2e-7 lx, K = 0.8 for a nautical mile, so the
     * extinction is -ln 0.8 a mile. A check of the formula only; their thresholds are those of mariners.
     */
    @ParameterizedTest
    @CsvSource({"1, 0.9, 0.05", "2, 4.3, 0.05", "3, 12, 0.5", "4, 27, 0.5", "5, 52, 0.5", "6, 94, 0.5"})
    void lightsOfShips(double rangeNm, double printedCd, double halfDigit) {
        double extinction = -Math.log(0.8) / Lengths.METRES_PER_NAUTICAL_MILE;
        double metres = rangeNm * Lengths.METRES_PER_NAUTICAL_MILE;
        double intensity = 2e-7 / Allard.illuminanceLx(1, extinction, metres);
        assertEquals(printedCd, intensity, halfDigit);
        assertEquals(metres, Allard.range(intensity, extinction, 2e-7).rangeM(), 1);
    }

    @Test
    void moreLightReachesFartherAndThickerAirLessFar() {
        double before = 0;
        for (double intensity = 10; intensity < 1e6; intensity *= 3) {
            double range = Allard.range(intensity, 3e-4, 1e-5).rangeM();
            assertTrue(range > before);
            assertTrue(Allard.range(intensity, 6e-4, 1e-5).rangeM() < range);
            assertTrue(Allard.range(intensity, 3e-4, 1e-4).rangeM() < range);
            before = range;
        }
    }

    @ParameterizedTest
    @CsvSource({"0, 1e-4, 1e-4", "-1, 1e-4, 1e-4", "NaN, 1e-4, 1e-4", "1, -1, 1e-4", "1, NaN, 1e-4", "1, 1e-4, 0", "1, 1e-4, NaN"})
    void numbersWithoutARangeAreRefused(double intensityCd, double extinction, double thresholdLx) {
        assertThrows(IllegalArgumentException.class, () -> Allard.range(intensityCd, extinction, thresholdLx));
    }

    @ParameterizedTest
    @CsvSource({"0, 5", "-5, 5", "NaN, 5", "1000, 0", "1000, 100", "1000, NaN"})
    void visibilitiesWithoutAnExtinctionAreRefused(double visibilityM, double contrast) {
        assertThrows(IllegalArgumentException.class, () -> Allard.extinctionPerM(visibilityM, contrast));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/cases/bar-separation.csv")
    void anglesBetweenBars(double rangeNm, double spacingFt, double minutes, double halfDigit) {
        double apparent = Lengths.feetToMetres(spacingFt) * Math.sin(Math.toRadians(3));
        assertEquals(minutes, Allard.separationMinutes(apparent, rangeNm * Lengths.METRES_PER_NAUTICAL_MILE), halfDigit);
    }

    /**
     * Bars on a 3 degree path at 1': 23 ft look apart to 4138 ft (0.68 NM), 700 ft to 20.7 NM. Rows at 3': 9 m to 10.3 km, 6 m to 6.9 km.
     * All computed apart.
     */
    @Test
    void rangesOfSeparation() {
        double sin = Math.sin(Math.toRadians(3));
        assertEquals(4138, Allard.separationRangeM(23 * sin, 1), 0.5);
        assertEquals(20.7, Lengths.feetToMetres(Allard.separationRangeM(700 * sin, 1)) / Lengths.METRES_PER_NAUTICAL_MILE, 0.05);
        assertEquals(10.3, Allard.separationRangeM(9, 3) / 1000, 0.05);
        assertEquals(6.9, Allard.separationRangeM(6, 3) / 1000, 0.05);
        assertTrue(Allard.separationMinutes(1, 1000) > 3, "1 m for each kilometre is more than 3 minutes");
    }
}
