package slopewright.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Measured heights along a line; expected heights are worked by hand. */
class ProfileTest {

    private static final Profile PROFILE = Profile.of(new double[] {-60, 0, 100, 400}, new double[] {-1, 0, 2, -4});

    @ParameterizedTest
    @CsvSource({"-60, -1", "-30, -0.5", "0, 0", "50, 1", "100, 2", "250, -1", "400, -4", "399, -3.98"})
    void heightsBetweenPointsLieOnTheStraightPiece(double placeM, double heightM) {
        assertEquals(heightM, PROFILE.heightAt(placeM), 1e-12);
        assertTrue(PROFILE.covers(placeM));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-60.001, 400.001, Double.NaN, Double.NEGATIVE_INFINITY})
    void beyondItsEndsAProfileKnowsNothing(double placeM) {
        assertFalse(PROFILE.covers(placeM));
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class, () -> PROFILE.heightAt(placeM));
        assertTrue(refused.getMessage().contains("-60.0 m to 400.0 m"), refused.getMessage());
    }

    @Test
    void pointsAreReadBack() {
        assertEquals(4, PROFILE.size());
        assertEquals(-60, PROFILE.firstM());
        assertEquals(400, PROFILE.lastM());
        assertEquals(100, PROFILE.alongM(2));
        assertEquals(2, PROFILE.heightM(2));
    }

    @Test
    void aRaisedProfileLeavesTheOldOneAlone() {
        Profile raised = PROFILE.raised(0.8);
        assertEquals(1.8, raised.heightAt(50), 1e-12);
        assertEquals(1, PROFILE.heightAt(50), 1e-12);
    }

    @Test
    void theCallersArraysAreCopied() {
        double[] places = {0, 10};
        double[] heights = {1, 2};
        Profile profile = Profile.of(places, heights);
        places[1] = 5;
        heights[1] = 50;
        assertEquals(2, profile.heightAt(10), 0);
    }

    @Test
    void placesThatDoNotIncreaseAreRefused() {
        IllegalArgumentException same = assertThrows(IllegalArgumentException.class,
                () -> Profile.of(new double[] {0, 10, 10}, new double[] {0, 0, 1}));
        assertTrue(same.getMessage().contains("point 3"), same.getMessage());
        assertThrows(IllegalArgumentException.class, () -> Profile.of(new double[] {0, -10}, new double[] {0, 0}));
    }

    @Test
    void missingPartsAndWildNumbersAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> Profile.of(new double[] {0}, new double[] {0}));
        assertThrows(IllegalArgumentException.class, () -> Profile.of(new double[] {0, 1}, new double[] {0}));
        IllegalArgumentException hole = assertThrows(IllegalArgumentException.class,
                () -> Profile.of(new double[] {0, 1}, new double[] {0, Double.NaN}));
        assertTrue(hole.getMessage().contains("point 2"), hole.getMessage());
        assertThrows(IllegalArgumentException.class,
                () -> Profile.of(new double[] {Double.NEGATIVE_INFINITY, 1}, new double[] {0, 0}));
    }

    /** Zero has a sign in the arithmetic of computers, and none on the ground. */
    @Test
    void theSignOfZeroIsNoPlace() {
        Profile above = Profile.of(new double[] {0, 10}, new double[] {1, 2});
        assertEquals(1, above.heightAt(-0.0), 0);
        Profile below = Profile.of(new double[] {-10, -0.0}, new double[] {1, 2});
        assertEquals(2, below.heightAt(0), 0);
    }
}
