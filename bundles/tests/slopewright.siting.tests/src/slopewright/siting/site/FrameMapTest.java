package slopewright.siting.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.model.Aerodrome;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;

/** Many points lie in a frame where the geodesic to each of them says; the oracle is the geodesic, asked here. */
class FrameMapTest {

    private static final int POINTS = 5000;
    private static final double BEARING_DEG = 217.3;

    private static SiteFrame frame(double latitude, double longitude) {
        SlopewrightFactory make = SlopewrightFactory.eINSTANCE;
        Project project = make.createProject();
        Aerodrome aerodrome = make.createAerodrome();
        Runway runway = make.createRunway();
        RunwayEnd end = make.createRunwayEnd();
        Place threshold = make.createPlace();
        threshold.setLatitudeDeg(latitude);
        threshold.setLongitudeDeg(longitude);
        end.setThreshold(threshold);
        end.setThresholdElevationM(40.0);
        end.setTrueBearingDeg(BEARING_DEG);
        runway.getEnds().add(end);
        aerodrome.getRunways().add(runway);
        project.setAerodrome(aerodrome);
        return SiteFrame.of(end);
    }

    /** Boxes of some kilometres, of a degree, of ten degrees, across the antimeridian, near a pole, on the equator. */
    @ParameterizedTest
    @CsvSource({"47.3, -11.9, 0.12", "-33.9, 151.2, 0.9", "0, 0, 0.3", "69.9, 25.4, 0.4", "52, 4, 9", "-17.7, 179.95, 0.2", "88.9, 10, 0.3",
            "61, 10, 0.000001"})
    void everyPointLiesWhereTheGeodesicSays(double latitude, double longitude, double halfDeg) {
        Random random = new Random(4);
        double[] north = random.doubles(POINTS, latitude - halfDeg, latitude + halfDeg).toArray();
        double[] east = random.doubles(POINTS, longitude - halfDeg, longitude + halfDeg).map(at -> at > 180 ? at - 360 : at).toArray();
        double[] elevation = random.doubles(POINTS, -20, 900).toArray();
        SurveyPoints.InFrame points = new SurveyPoints(false, north, east, elevation, List.of()).toFrame(frame(latitude, longitude));
        for (int i = 0; i < POINTS; i++) {
            GeodesicData line = Geodesic.WGS84.Inverse(latitude, longitude, north[i], east[i]);
            double angle = Math.toRadians(line.azi1 - BEARING_DEG);
            assertEquals(line.s12 * Math.cos(angle), points.alongM()[i], 2e-7, "point " + i);
            assertEquals(line.s12 * Math.sin(angle), points.rightM()[i], 2e-7, "point " + i);
            assertEquals(elevation[i] - 40, points.heightM()[i], 1e-9);
        }
    }

    @Test
    void aBoxOfAnAerodromeHasAMap() {
        Random random = new Random(9);
        SiteFrame frame = frame(47.3, -11.9);
        double[] east = random.doubles(FrameMap.LEAST_POINTS, -12.1, -11.7).toArray();
        double[] north = random.doubles(FrameMap.LEAST_POINTS, 47.2, 47.4).toArray();
        assertTrue(FrameMap.over(frame, east, north).isPresent());
        double[] far = random.doubles(FrameMap.LEAST_POINTS, 40, 50).toArray();
        assertTrue(FrameMap.over(frame, east, far).isEmpty());
    }
}
