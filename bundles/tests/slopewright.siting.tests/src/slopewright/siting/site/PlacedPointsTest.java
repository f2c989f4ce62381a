package slopewright.siting.site;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.geometry.FramePoint;
import slopewright.geometry.PointTiles;
import slopewright.geometry.ProtectionSurface;
import slopewright.geometry.SurfaceSweep;
import slopewright.model.Aerodrome;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;

/**
 * Points that are brought into a frame tile by tile stand where all of them together stand, which the geodesic says (FrameMapTest), and
 * never outside of what is said of their tile.
 */
class PlacedPointsTest {

    private static final int POINTS = 5000;

    private static SiteFrame frame(double latitude, double longitude, double bearingDeg) {
        Aerodrome field = SlopewrightFactory.eINSTANCE.createAerodrome();
        Project project = SlopewrightFactory.eINSTANCE.createProject();
        project.setAerodrome(field);
        field.setCoordinateReference("WGS84");
        Runway runway = SlopewrightFactory.eINSTANCE.createRunway();
        field.getRunways().add(runway);
        RunwayEnd end = SlopewrightFactory.eINSTANCE.createRunwayEnd();
        runway.getEnds().add(end);
        Place threshold = SlopewrightFactory.eINSTANCE.createPlace();
        threshold.setLatitudeDeg(latitude);
        threshold.setLongitudeDeg(longitude);
        threshold.setElevationM(100.0);
        end.setThreshold(threshold);
        end.setThresholdElevationM(100.0);
        end.setTrueBearingDeg(bearingDeg);
        return SiteFrame.of(end);
    }

    /** Middle of the points, how wide they lie, degrees: near, far, on the equator, near a pole, across the antimeridian. */
    @ParameterizedTest
    @CsvSource({"47, 11, 0.3", "47, 11, 1.9", "49.5, 13.5, 1.5", "0, 0, 1", "86, 40, 1.5", "88.5, 40, 1.5", "-12, 179.9, 0.8", "10, 60, 1"})
    void everyPointStandsInTheCircleOfItsTile(double latitude, double longitude, double wideDeg) {
        Random random = new Random(5);
        double[] north = random.doubles(POINTS, latitude - wideDeg / 2, latitude + wideDeg / 2).toArray();
        double[] east = random.doubles(POINTS, longitude - wideDeg / 2, longitude + wideDeg / 2)
                .map(degrees -> Math.IEEEremainder(degrees, 360)).toArray();
        double[] elevation = random.doubles(POINTS, 0, 400).toArray();
        SurveyPoints points = new SurveyPoints(false, north, east, elevation, List.of());
        double middle = latitude == 10 || latitude == 49.5 ? 47 : latitude;
        SiteFrame frame = frame(middle, latitude == 10 || latitude == 49.5 ? 11 : longitude, 33);
        SurveyPoints.InFrame all = points.toFrame(frame);
        PlacedPoints placed = PlacedPoints.of(new PointOrder(points), frame);
        PointTiles tiles = placed.tiles();
        int seen = 0;
        for (int tile = 0; tile < tiles.count(); tile++) {
            SurveyPoints.InFrame around = placed.around(tile);
            for (int at = 0; at < around.alongM().length; at++) {
                int i = tiles.index(tiles.from(tile) + at);
                assertEquals(all.alongM()[i], around.alongM()[at]);
                assertEquals(all.rightM()[i], around.rightM()[at]);
                assertEquals(all.heightM()[i], around.heightM()[at]);
                assertEquals(new FramePoint(all.alongM()[i], all.rightM()[i], all.heightM()[i]), placed.point(i));
                // a strip that begins at the point, one millimetre of it: a circle that holds the point is never outside of it
                SurfaceSweep here = new SurfaceSweep(new ProtectionSurface(all.alongM()[i], all.rightM()[i], 0, 0.001, 0, 0.001, 0, 0));
                assertTrue(tiles.mostExcessM(tile, here, 0, 0) >= all.heightM()[i], "point " + i);
                seen++;
            }
        }
        assertEquals(POINTS, seen);
        assertArrayEquals(all.alongM(), placed.all().alongM());
        assertArrayEquals(all.rightM(), placed.all().rightM());
        assertArrayEquals(all.heightM(), placed.all().heightM());
    }
}
