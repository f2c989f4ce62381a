package slopewright.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static slopewright.siting.Trials.FOOT;
import static slopewright.siting.Trials.hasNote;
import static slopewright.siting.Trials.rules;
import static slopewright.siting.Trials.runway;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.geometry.Profile;

/**
 * Where an electronic glide path meets the runway profile (FAA: the runway point of intercept is where the path meets the profile). By
 * hand: a path of angle t at height h over the threshold meets a runway that rises by s at h / (tan t + s); tan 3 deg = 0.0524078.
 */
class GlidePathInterceptTest {

    private static final double TAN = Math.tan(Math.toRadians(3));

    private static GlidePathIntercept of(SitingRequest.Builder request) {
        return GlidePathIntercept.of(request.build(), 3).orElseThrow();
    }

    private static SitingRequest.Builder height(double heightM) {
        return SitingRequest.builder().set(Input.REFERENCE_DATUM_HEIGHT, heightM);
    }

    /** 15.24 / (0.0524078 + 0.01) = 244.20 m, where the runway lies 2.442 m up; 290.80 m would be that of a level runway. */
    @ParameterizedTest
    @CsvSource({"1, 244.20, 2.442", "-1, 359.37, -3.594", "0.4, 270.18, 1.081"})
    void aHeightIsCarriedToTheSlopeOfTheRunway(double percent, double originM, double groundM) {
        GlidePathIntercept path = of(height(15.24).set(Input.GROUND_SLOPE, percent));
        assertEquals(originM, path.originM(), 0.005);
        assertEquals(groundM, path.groundM(), 0.0005);
        assertEquals(15.24, path.heightM(), 1e-12);
        assertEquals(GlidePathIntercept.Datum.UNIFORM_SLOPE, path.datum());
    }

    /** A runway that is level for 200 m and then rises by 2 %: (15.24 + 0.02 x 200) / (0.0524078 + 0.02) = 265.72 m, 1.314 m up. */
    @Test
    void aHeightIsCarriedToTheProfile() {
        Profile profile = Profile.of(new double[] {-300, 200, 1200}, new double[] {0, 0, 20});
        GlidePathIntercept path = of(height(15.24).runwayProfile(profile).set(Input.GROUND_SLOPE, -1.0));
        assertEquals(265.72, path.originM(), 0.005);
        assertEquals(1.314, path.groundM(), 0.0005);
        assertEquals(GlidePathIntercept.Datum.PROFILE, path.datum());
        assertEquals(15.24 + 1000 * TAN, path.heightBeforeM(1000), 1e-9);
    }

    /** The origin 300 m away, where the profile lies 2 m up: over the threshold the path is 2 + 300 x 0.0524078 = 17.722 m high. */
    @Test
    void anOriginLiesOnTheProfile() {
        Profile profile = Profile.of(new double[] {0, 200, 1200}, new double[] {0, 0, 20});
        GlidePathIntercept path = of(SitingRequest.builder().set(Input.GLIDE_PATH_ORIGIN, 300.0).runwayProfile(profile));
        assertEquals(2, path.groundM(), 1e-12);
        assertEquals(17.722, path.heightM(), 0.0005);
        assertEquals(300, path.originM());
    }

    /** The angle is the path's own: 15 / tan 2.8 deg = 306.70 m. */
    @Test
    void theAngleOfThePathCounts() {
        assertEquals(306.70, of(height(15).set(Input.GLIDE_PATH_ANGLE, 2.8)).originM(), 0.005);
        assertEquals(GlidePathIntercept.Datum.LEVEL, of(height(15)).datum());
        assertEquals(15 / TAN, of(height(15).set(Input.LENS_HEIGHT, 2.0)).originM(), 1e-9, "a lens is no runway");
        assertTrue(GlidePathIntercept.of(SitingRequest.builder().build(), 3).isEmpty());
    }

    @Test
    void aPathThatDoesNotMeetTheRunwayIsRefused() {
        Profile shorter = Profile.of(new double[] {0, 200}, new double[] {0, 0});
        assertEquals("siting.refused.glide-path-misses-profile",
                assertThrows(SitingException.class, () -> of(height(15).runwayProfile(shorter))).reason().key());
        assertEquals("siting.refused.runway-profile-end", assertThrows(SitingException.class,
                () -> of(SitingRequest.builder().set(Input.GLIDE_PATH_ORIGIN, 250.0).runwayProfile(shorter))).reason().key());
        assertEquals("siting.refused.glide-path-misses-slope",
                assertThrows(SitingException.class, () -> of(height(15).set(Input.GROUND_SLOPE, -6.0))).reason().key());
    }

    /** US rows stand at the intercept (UFC 3-535-01 12-3.1.1), group 4 300 ft beyond: 244.20 m, and 244.20 + 91.44 m. */
    @Test
    void aUsRowStandsAtTheTrueIntercept() {
        SitingRequest.Builder request = runway().set(Input.EYE_HEIGHT, null).set(Input.REFERENCE_DATUM_HEIGHT, 15.24)
                .set(Input.GROUND_SLOPE, 1.0).set(Input.HEIGHT_GROUP, 3.0);
        Siting row = Families.site("four-unit-row", request.build(), rules("faa"));
        assertEquals(244.20, row.distanceM(), 0.005);
        assertTrue(hasNote(row, "siting.note.glide-path-uniform-slope"));
        assertTrue(hasNote(row, "siting.note.glide-path-angle-taken"));
        Siting farther = Families.site("four-unit-row", request.set(Input.HEIGHT_GROUP, 4.0).set(Input.GLIDE_PATH_ANGLE, 3.0).build(),
                rules("faa"));
        assertEquals(244.20 + 300 * FOOT, farther.distanceM(), 0.005);
        assertFalse(hasNote(farther, "siting.note.glide-path-angle-taken"));
        Siting level = Families.site("four-unit-row", runway().set(Input.EYE_HEIGHT, null).set(Input.REFERENCE_DATUM_HEIGHT, 15.24).build(),
                rules("faa"));
        assertEquals(290.80, level.distanceM(), 0.005);
        assertTrue(hasNote(level, "siting.note.glide-path-level"), "the datum is said");
    }

    /**
     * ICAO: the slope through the origin raised by the mean eye-to-antenna height meets the lenses (Fig 5-19 b). Origin 300 m, 2 m up, mean
     * 2.2 m: 2 + 300 tan 3 deg + 2.2 = 19.922 m over the threshold; lenses at threshold level stand 19.922 / tan 3 deg = 380.14 m away.
     */
    @Test
    void anIcaoRowIsSitedFromTheOriginOnTheProfile() {
        Profile profile = Profile.of(new double[] {0, 200, 1200}, new double[] {0, 0, 20});
        Siting row = Families.site("four-unit-row", runway().set(Input.EYE_HEIGHT, null).set(Input.GLIDE_PATH_ORIGIN, 300.0)
                .set(Input.EYE_TO_ANTENNA_MIN, 1.85).set(Input.EYE_TO_ANTENNA_MAX, 2.55).runwayProfile(profile)
                .approach(Approach.INSTRUMENT).build(), rules("icao:5th"));
        assertEquals(380.14, row.distanceM(), 0.005);
        assertTrue(hasNote(row, "siting.note.glide-path-profile"));
    }
}
