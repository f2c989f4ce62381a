package slopewright.evaluation.landing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;

import slopewright.evaluation.TrialSite;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.Place;
import slopewright.siting.SitingException;

/** Obstacles that were measured from the hover point, worked by hand; the site lands due north from (0, 0) at 100 m. */
class SightedObstaclesTest {
    private static final Sighting.Instrument INSTRUMENT = new Sighting.Instrument(2, 0, 5, 0.5, 1, 1.6);

    private final SightedObstacles made = new SightedObstacles(TrialSite.helipad("tri-colour", 6).host(), INSTRUMENT);

    private static Sighting byAngle(double trueDeg, double distanceM, double angleDeg) {
        return new Sighting(trueDeg, distanceM, OptionalDouble.empty(), OptionalDouble.of(angleDeg));
    }

    private static Sighting byHeight(double trueDeg, double distanceM, double heightM) {
        return new Sighting(trueDeg, distanceM, OptionalDouble.of(heightM), OptionalDouble.empty());
    }

    /**
     * Due east, 500 m, 4°: 1.6 + 500 tan 4° = 36.5634 m. The distance may be 25 m out, the bearing 2°: root of 25² + (525 sin 2°)² =
     * 31.03 m. Half a degree and 25 m more make 525 tan 4.5° = 41.3189 against 500 tan 4° = 34.9634: 6.3555 m, rounded up to 6.36.
     */
    @Test
    void aMastByClinometer() {
        Obstacle mast = made.point("mast", byAngle(90, 500, 4));
        Place place = mast.getPlaces().get(0);
        assertEquals(500, place.getEastM(), 1e-9);
        assertEquals(0, place.getNorthM(), 1e-9);
        assertEquals(136.563, place.getElevationM(), 1e-9, "to the millimetre");
        assertEquals(Math.ceil(Math.hypot(25, 525 * Math.sin(Math.toRadians(2))) * 100) / 100, mast.getHorizontalAccuracyM(), 1e-9);
        assertEquals(6.36, mast.getVerticalAccuracyM(), 1e-9);
        assertEquals(ObstacleKind.POINT, mast.getKind());
        assertTrue(mast.getRemarks().contains("90.00° true, 500.00 m away, top 4.00° above the horizon"), mast.getRemarks());
    }

    /** South-west at 200 m and 12 m high: 141.42 m south and west; its height is as exact as heights are. */
    @Test
    void aTreeByHeight() {
        Obstacle tree = made.tree("oak", byHeight(225, 200, 12), 5);
        assertEquals(8, tree.getPlaces().size());
        assertEquals(1, tree.getVerticalAccuracyM());
        double side = 200 * Math.sqrt(0.5);
        for (Place corner : tree.getPlaces()) {
            // a ring of eight about a circle of 5 m: 5 / cos 22.5° from its middle
            assertEquals(5 / Math.cos(Math.PI / 8), Math.hypot(corner.getEastM() + side, corner.getNorthM() + side), 1e-9);
            assertEquals(112, corner.getElevationM(), 1e-9);
        }
    }

    /** Supports 20 and 30 m high, 400 m apart, a sag of 8 m: 25 − 8 = 17 m in the middle, a quarter along 22.5 − 4 · 8 · ¼ · ¾ = 16.5 m. */
    @Test
    void aWireHangs() {
        Obstacle wire = made.wire("line", byHeight(90, 200, 20), byHeight(270, 200, 30), 8);
        assertEquals(ObstacleKind.LINE, wire.getKind());
        assertEquals(17, wire.getPlaces().size());
        assertEquals(117, wire.getPlaces().get(8).getElevationM(), 1e-9);
        assertEquals(0, wire.getPlaces().get(8).getEastM(), 1e-9);
        assertEquals(116.5, wire.getPlaces().get(4).getElevationM(), 1e-9);
        assertEquals(120, wire.getPlaces().get(0).getElevationM(), 1e-9);
        assertEquals(130, wire.getPlaces().get(16).getElevationM(), 1e-9);
        assertEquals(2, made.wire("taut", byHeight(90, 200, 20), byHeight(270, 200, 30), 0).getPlaces().size());
    }

    @Test
    void groundRisesStraight() {
        Obstacle hill = made.slope("hill", byHeight(0, 300, 0), byHeight(0, 900, 60));
        assertEquals(2, hill.getPlaces().size());
        assertEquals(900, hill.getPlaces().get(1).getNorthM(), 1e-9);
        assertEquals(160, hill.getPlaces().get(1).getElevationM(), 1e-9);
    }

    /** What is seen 2° below the horizon may be 1.5° below and 5 % nearer: 100 tan 2° less 95 tan 1.5°, 3.4921 − 2.4877 = 1.0044 m. */
    @Test
    void belowTheHorizonTheNearerPlaceIsTheHigher() {
        assertEquals(100 * Math.tan(Math.toRadians(2)) - 95 * Math.tan(Math.toRadians(1.5)),
                byAngle(0, 100, -2).verticalAccuracyM(INSTRUMENT), 1e-9);
    }

    @Test
    void numbersThatMakeNoMeasurementAreRefused() {
        assertThrows(SitingException.class, () -> byHeight(0, 0, 5));
        assertThrows(SitingException.class, () -> byAngle(0, 100, 85));
        assertThrows(SitingException.class, () -> new Sighting(0, 100, OptionalDouble.empty(), OptionalDouble.empty()));
        assertThrows(SitingException.class, () -> new Sighting(0, 100, OptionalDouble.of(1), OptionalDouble.of(1)));
        assertThrows(SitingException.class, () -> new Sighting.Instrument(-1, 0, 0, 0, 0, 0));
        assertThrows(SitingException.class, () -> made.tree("t", byHeight(0, 100, 5), 0));
        assertThrows(SitingException.class, () -> made.wire("w", byHeight(0, 100, 5), byHeight(9, 100, 5), -1));
    }
}
