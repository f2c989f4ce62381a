package slopewright.siting.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;

import org.junit.jupiter.api.Test;

import slopewright.geometry.FramePoint;
import slopewright.model.Aerodrome;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.siting.SitingException;

/** Several runways on one plane. */
class PlanPlaneTest {

    private static final SlopewrightFactory MAKE = SlopewrightFactory.eINSTANCE;

    private final Project project = MAKE.createProject();
    private final Aerodrome aerodrome = MAKE.createAerodrome();
    private final RunwayEnd west = MAKE.createRunwayEnd();
    private final RunwayEnd east = MAKE.createRunwayEnd();

    PlanPlaneTest() {
        project.setAerodrome(aerodrome);
        Runway runway = MAKE.createRunway();
        aerodrome.getRunways().add(runway);
        runway.getEnds().add(west);
        runway.getEnds().add(east);
        west.setThresholdElevationM(10.0);
        east.setThresholdElevationM(12.0);
    }

    private static Place geodetic(double latitudeDeg, double longitudeDeg) {
        Place place = MAKE.createPlace();
        place.setLatitudeDeg(latitudeDeg);
        place.setLongitudeDeg(longitudeDeg);
        return place;
    }

    private static Place grid(double eastM, double northM) {
        Place place = MAKE.createPlace();
        place.setEastM(eastM);
        place.setNorthM(northM);
        return place;
    }

    /** Length of a degree of latitude on WGS 84 by the usual series: 111132.954 - 559.822 cos 2φ + 1.175 cos 4φ metres, φ = 60°. */
    @Test
    void aMinuteOfLatitudeLiesNorthOfTheReference() {
        west.setThreshold(geodetic(60, 20));
        west.setTrueBearingDeg(90.0);
        PlanPoint north = PlanPlane.of(project).orElseThrow().toPlane(geodetic(60 + 1 / 60.0, 20));
        assertEquals(0, north.eastM(), 1e-6);
        assertEquals((111132.954 + 559.822 / 2 - 1.175 / 2) / 60, north.northM(), 0.05);
    }

    @Test
    void placesComeBackFromThePlane() {
        west.setThreshold(geodetic(-35.2, 149.1));
        west.setTrueBearingDeg(172.0);
        PlanPlane plane = PlanPlane.of(project).orElseThrow();
        Place there = MAKE.createPlace();
        there.setElevationM(571.0);
        plane.toPlace(new PlanPoint(-4300.25, 8123.5), there);
        PlanPoint again = plane.toPlane(there);
        assertEquals(-4300.25, again.eastM(), 1e-6);
        assertEquals(8123.5, again.northM(), 1e-6);
        assertEquals(571.0, there.getElevationM());
    }

    /** Both ends see the same ground: a point laid out from one end has the same place on the plane as laid out from the other. */
    @Test
    void theFramesOfBothEndsMeetOnThePlane() {
        west.setThreshold(geodetic(62, 20));
        west.setTrueBearingDeg(80.0);
        SiteFrame frame = SiteFrame.of(west);
        Place far = MAKE.createPlace();
        frame.fromFrame(new FramePoint(3000, 0, 2), far);
        east.setThreshold(far);
        PlanPlane plane = PlanPlane.of(project).orElseThrow();
        PlanAxis fromWest = plane.axis(west);
        PlanAxis fromEast = plane.axis(east);
        assertEquals(180, Math.abs(fromWest.bearingDeg() - fromEast.bearingDeg()), 1e-3);
        assertTrue(fromWest.toPlane(400, 60).distanceM(fromEast.toPlane(2600, -60)) < 0.01);
        assertEquals(0, fromEast.toPlane(0, 0).distanceM(plane.toPlane(far)), 1e-9);
    }

    @Test
    void aLocalGridIsTurnedByItsRotation() {
        aerodrome.setCoordinateReference("local");
        aerodrome.setGridRotationDeg(90.0);
        west.setThreshold(grid(1000, 2000));
        west.setTrueBearingDeg(90.0);
        PlanPlane plane = PlanPlane.of(project).orElseThrow();
        PlanPoint point = plane.toPlane(grid(1000, 2300));
        assertEquals(300, point.eastM(), 1e-9);
        assertEquals(0, point.northM(), 1e-9);
        assertEquals(90, plane.axis(west).bearingDeg(), 1e-9);
    }

    @Test
    void anAxisTurnsBackWhatItTurned() {
        PlanAxis axis = new PlanAxis(new PlanPoint(50, -20), 213);
        FramePoint back = axis.toFrame(axis.toPlane(312.5, -48), 3);
        assertEquals(312.5, back.alongM(), 1e-9);
        assertEquals(-48, back.rightM(), 1e-9);
        assertEquals(3, back.heightM());
        PlanAxis eastward = new PlanAxis(new PlanPoint(0, 0), 90);
        assertEquals(new PlanPoint(100, -10).distanceM(eastward.toPlane(100, 10)), 0, 1e-9);
    }

    @Test
    void withoutAnyPlaceThereIsNoPlane() {
        assertTrue(PlanPlane.of(project).isEmpty());
        project.setAerodrome(null);
        assertTrue(PlanPlane.of(project).isEmpty());
    }

    @Test
    void whatIsMissingIsNamed() {
        aerodrome.setLatitudeDeg(47.0);
        aerodrome.setLongitudeDeg(8.0);
        PlanPlane plane = PlanPlane.of(project).orElseThrow();
        west.setDesignator("09");
        assertTrue(assertThrows(SitingException.class, () -> plane.axis(west)).getMessage().contains("runway 09"));
    }

    /** What nobody moved is drawn where it was while the first threshold goes a little; where that goes far, the plane goes along. */
    @Test
    void aPlaneKeepsItsReferenceWhileTheFirstThresholdMovesALittle() {
        aerodrome.setCoordinateReference("local");
        west.setThreshold(grid(1000, 2000));
        Place stays = grid(1500, 2600);
        PlanPlane before = PlanPlane.of(project).orElseThrow();
        west.setThreshold(grid(900, 2050));
        PlanPlane after = PlanPlane.of(project, Optional.of(before)).orElseThrow();
        assertEquals(500, after.toPlane(stays).eastM(), 1e-9);
        assertEquals(600, after.toPlane(stays).northM(), 1e-9);
        assertEquals(-100, after.toPlane(west.getThreshold()).eastM(), 1e-9);
        west.setThreshold(grid(21_000, 2000));
        PlanPlane far = PlanPlane.of(project, Optional.of(before)).orElseThrow();
        assertEquals(-19_500, far.toPlane(stays).eastM(), 1e-6);
        aerodrome.setGridRotationDeg(10.0);
        west.setThreshold(grid(1000, 2000));
        assertEquals(0, PlanPlane.of(project, Optional.of(before)).orElseThrow().toPlane(west.getThreshold()).eastM(), 1e-9);
    }
}
