package slopewright.siting.magnetic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.siting.SitingException;
import slopewright.siting.internal.DataFile;
import slopewright.standards.Provenance;
import slopewright.standards.StandardsException;

/** The model against its published test values and a second copy of its coefficients, and what it refuses. */
class MagneticModelTest {

    private static final MagneticModel MODEL = MagneticModel.bundled();
    private static final String HEAD = "# name: X\n# title: x\n# source: s\n# epoch: 2025\n# valid from: 2025\n# valid to: 2030\n"
            + "# reference radius km: 6371.2\n# provenance: secondary\n# note: n\nn,m,g,h,gDot,hDot\n";

    /**
     * Published test values. Angles to half the last printed digit. East and down to the fifth decimal of a nanotesla. The printed
     * north part, and with it the horizontal and total field, is good to the third decimal only: the package that carries the table
     * computes 24299.85307628 nT where the table prints 24299.852822, and this model agrees with the package.
     */
    @ParameterizedTest
    @CsvFileSource(resources = "/cases/wmm-2025-test-values.csv")
    void publishedTestValues(double year, double heightKm, double latitudeDeg, double longitudeDeg, double northNt, double eastNt,
            double downNt,
            double horizontalNt, double totalNt, double inclinationDeg, double declinationDeg) {
        MagneticField field = MODEL.field(latitudeDeg, longitudeDeg, heightKm * 1000, year);
        assertEquals(declinationDeg, field.declinationDeg(), 0.005);
        assertEquals(inclinationDeg, field.inclinationDeg(), 0.005);
        assertEquals(northNt, field.northNt(), 1e-3);
        assertEquals(eastNt, field.eastNt(), 1e-5);
        assertEquals(downNt, field.downNt(), 1e-5);
        assertEquals(horizontalNt, field.horizontalNt(), 1e-3);
        assertEquals(totalNt, field.totalNt(), 1e-3);
    }

    /** What the package geomagnetism 0.2.0 computes from its own copy, to its last digits. */
    @ParameterizedTest
    @CsvSource({"65, 43, 93, 24299.85307628114, 210.51706617299922, 50037.923996804515, 0.49635846055728516",
        "3, -50, -103, 19526.533156719415, 10362.990979853117, -31437.562788256862, 27.955487130928805",
        "18, 0, 21, 29274.81188182715, 659.8001176675556, -14316.722539731683, 1.2911223180753915"})
    void anotherEvaluator(double heightKm, double latitudeDeg, double longitudeDeg, double northNt, double eastNt, double downNt,
            double declinationDeg) {
        MagneticField field = MODEL.field(latitudeDeg, longitudeDeg, heightKm * 1000, 2025);
        assertEquals(northNt, field.northNt(), 1e-8);
        assertEquals(eastNt, field.eastNt(), 1e-8);
        assertEquals(downNt, field.downNt(), 1e-8);
        assertEquals(declinationDeg, field.declinationDeg(), 1e-11);
    }

    /** Every coefficient against a second copy from another package, digit by digit. */
    @ParameterizedTest
    @CsvFileSource(resources = "/cases/wmm-2025-second-copy.csv")
    void secondCopyOfTheCoefficients(int n, int m, double g, double h, double gDot, double hDot) {
        double[] row = DataFile.bundled("/data/wmm/wmm-2025.csv").rows().stream()
                .filter(coefficients -> coefficients[0] == n && coefficients[1] == m).findFirst()
                .orElseThrow();
        assertEquals(List.of(g, h, gDot, hDot), List.of(row[2], row[3], row[4], row[5]));
    }

    @Test
    void everyCoefficientUpToDegreeTwelve() {
        assertEquals(12 * 15 / 2, DataFile.bundled("/data/wmm/wmm-2025.csv").rows().size());
        assertEquals("WMM2025", MODEL.name());
        assertEquals(2025, MODEL.epoch());
        assertEquals(Provenance.SECONDARY, MODEL.citation().provenance(), "read in a copy, not at the makers");
        assertTrue(MODEL.citation().source().title().english().contains("World Magnetic Model 2025"));
    }

    /** The days that passed over the days of the year; 2028 is a leap year. */
    @ParameterizedTest
    @CsvSource({"2025-01-01, 2025.0", "2025-07-02, 2025.4986301370", "2028-07-02, 2028.5", "2028-12-31, 2028.9972677596",
            "2026-12-31, 2026.9972602740"})
    void daysAsDecimalYears(LocalDate date, double year) {
        assertEquals(year, MagneticModel.decimalYear(date), 1e-9);
    }

    /** The annual change is the slope of the variation in time: half of the difference over two years. */
    @Test
    void annualChangeIsTheSlopeInTime() {
        Declination found = MODEL.declination(51.5, -0.5, 100, LocalDate.of(2027, 1, 1));
        double before = MODEL.field(51.5, -0.5, 100, 2026.999).declinationDeg();
        double after = MODEL.field(51.5, -0.5, 100, 2027.001).declinationDeg();
        assertEquals((after - before) / 0.002, found.annualChangeDeg(), 1e-6);
        assertEquals(2027.0, found.decimalYear());
        assertEquals("WMM2025", found.model());
        assertTrue(found.notes().isEmpty());
    }

    /** On the epoch, a place of the published table: 50 S, 103 W, 3 km: 27.96 degrees east. */
    @Test
    void aPublishedPlaceByDate() {
        assertEquals(27.96, MODEL.declination(-50, -103, 3000, LocalDate.of(2025, 1, 1)).declinationDeg(), 0.005);
        assertEquals(MODEL.field(10, 190, 0, 2026).declinationDeg(), MODEL.field(10, -170, 0, 2026).declinationDeg(), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(strings = {"2024-12-31", "2030-01-01", "1999-05-05"})
    void aDateOutsideTheModelsTimeIsRefusedWithTheReason(LocalDate date) {
        assertFalse(MODEL.isValid(date));
        String message = assertThrows(SitingException.class, () -> MODEL.declination(50, 10, 0, date)).getMessage();
        assertTrue(message.contains("WMM2025 holds from 2025.0") && message.contains("2030.0") && message.contains(date.toString()),
                message);
    }

    @Test
    void theFirstAndTheLastDayAreInside() {
        assertTrue(MODEL.isValid(LocalDate.of(2025, 1, 1)));
        assertTrue(MODEL.isValid(LocalDate.of(2029, 12, 31)));
    }

    @ParameterizedTest
    @CsvSource({"90, 0, 0", "-90, 0, 0", "95, 0, 0", "NaN, 0, 0", "50, 400, 0", "50, NaN, 0", "50, 0, Infinity"})
    void noPlaceIsRefused(double latitudeDeg, double longitudeDeg, double heightM) {
        LocalDate date = LocalDate.of(2026, 1, 1);
        assertThrows(SitingException.class, () -> MODEL.declination(latitudeDeg, longitudeDeg, heightM, date));
    }

    /** The table's place 88 N, 26 E on 2029.5 has 2540 nT across, 89 N, 121 W on 2025.0 has 1504 nT. */
    @Test
    void aWeakHorizontalFieldIsSaid() {
        assertTrue(MODEL.declination(88, 26, 63000, LocalDate.of(2029, 7, 1)).notes().get(0).english().contains("doubtful"));
        assertTrue(MODEL.declination(89, -121, 28000, LocalDate.of(2025, 1, 1)).notes().get(0).english().contains("unreliable"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1,0,1,0,0,0\n1,0,1,0,0,0\n1,1,1,1,0,0\n", "1,0,1,0,0,0\n", "1,2,1,0,0,0\n1,1,1,1,0,0\n", "1,0,1,0,0\n",
            "1,0,x,0,0,0\n"})
    void damagedDataIsRefused(String rows) {
        StandardsException refused = assertThrows(StandardsException.class,
                () -> MagneticModel.of(DataFile.of("trial.csv", HEAD + rows), "trial.csv"));
        assertTrue(refused.getMessage().startsWith("trial.csv"), refused.getMessage());
    }
}
