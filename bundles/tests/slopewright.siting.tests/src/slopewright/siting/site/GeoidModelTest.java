package slopewright.siting.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GeoidModelTest {
    private static final GeoidModel MODEL = GeoidModel.bundled();

    /** The test values that were published with the full EGM96; the coarse grid misses it by no more than it says. */
    @ParameterizedTest
    @CsvSource({"38.628155, -90.220845, -31.628", "-14.621217, -54.978886, -2.969", "46.874319, 102.448729, -43.575",
        "-23.617446, 133.874712, 15.871", "38.625473, -0.0005, 50.066", "-0.466744, 0.0023, 17.329"})
    void liesAsFarFromTheFullModelAsItSays(double latitudeDeg, double longitudeDeg, double heightM) {
        assertEquals(heightM, MODEL.heightM(latitudeDeg, longitudeDeg), GeoidModel.MISSED_M);
    }

    /** 0.0 N 0.0 E is a point of the grid, and 17.16 m in the full model. */
    @Test
    void isThatOfTheGridAtItsPoints() {
        assertEquals(17, MODEL.heightM(0, 0), 0);
    }

    @Test
    void goesOnOverTheDateLineAndToThePoles() {
        assertEquals(MODEL.heightM(-17.3, 180), MODEL.heightM(-17.3, -180), 0);
        assertEquals(MODEL.heightM(90, 12), MODEL.heightM(90, -120), 0);
        assertEquals(MODEL.heightM(-90, 12), MODEL.heightM(-90, 180), 0);
    }

    @Test
    void refusesWhatIsNoPlace() {
        assertThrows(IllegalArgumentException.class, () -> MODEL.heightM(90.1, 0));
        assertThrows(IllegalArgumentException.class, () -> MODEL.heightM(0, 180.1));
        assertThrows(IllegalArgumentException.class, () -> MODEL.heightM(Double.NaN, 0));
    }
}
