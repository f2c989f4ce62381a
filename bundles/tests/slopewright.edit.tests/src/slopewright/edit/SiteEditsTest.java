package slopewright.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

import slopewright.model.ApproachDirection;
import slopewright.model.Place;
import slopewright.model.ProfilePoint;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.model.util.Ids;

/**
 * Thresholds that are moved and directions that are turned, with what goes along. On a local grid every length and bearing is plane
 * geometry: the runway lies from 0 to 1800 m east, so 100 m to the west makes it 1900 m, and the other end 1800 m to the south turns
 * it by 45 degrees.
 */
class SiteEditsTest {

    private final Sample sample = new Sample();

    private static Place grid(double eastM, double northM) {
        Place place = SlopewrightFactory.eINSTANCE.createPlace();
        place.setEastM(eastM);
        place.setNorthM(northM);
        return place;
    }

    private Runway onGrid() {
        sample.aerodrome.setCoordinateReference("local");
        Runway runway = sample.aerodrome.getRunways().get(0);
        runway.setStripLengthM(1920.0);
        for (RunwayEnd end : runway.getEnds()) {
            end.setLandingDistanceM(1800.0);
            Place place = end.getThreshold();
            place.setLatitudeDeg(null);
            place.setLongitudeDeg(null);
            place.setNorthM(0.0);
            place.setEastM(end == sample.end ? 0.0 : 1800.0);
        }
        for (int chainage = 0; chainage <= 1800; chainage += 900) {
            ProfilePoint point = SlopewrightFactory.eINSTANCE.createProfilePoint();
            point.setChainageM((double) chainage);
            point.setElevationM(50 + chainage / 450.0);
            runway.getCentreLine().add(point);
        }
        sample.withProfile();
        return runway;
    }

    private static List<Double> chainages(List<ProfilePoint> points) {
        return points.stream().map(ProfilePoint::getChainageM).toList();
    }

    @Test
    void aRunwayGrowsByItsFirstEndAndItsProfilesStayOnTheGround() {
        Runway runway = onGrid();
        EditHarness.cycle(sample.project, MoveThreshold.to(sample.end, grid(-100, 0)), () -> {
            assertEquals(-100, sample.end.getThreshold().getEastM());
            assertEquals(1900, runway.getLengthM());
            assertEquals(2020, runway.getStripLengthM());
            assertEquals(1900, sample.end.getLandingDistanceM());
            assertEquals(1900, sample.other.getLandingDistanceM());
            assertEquals(90, sample.end.getTrueBearingDeg());
            assertEquals(270, sample.other.getTrueBearingDeg());
            assertEquals(List.of(100.0, 1000.0, 1900.0), chainages(runway.getCentreLine()));
            assertEquals(List.of(100.0, 400.0, 700.0), chainages(sample.end.getSiteProfile()));
            assertEquals(50, sample.end.getThresholdElevationM(), "nobody has measured the new place");
        });
    }

    @Test
    void itsFarEndLeavesTheChainagesOfTheCentreLine() {
        Runway runway = onGrid();
        EditHarness.cycle(sample.project, MoveThreshold.to(sample.other, grid(1700, 0)), () -> {
            assertEquals(1700, runway.getLengthM());
            assertEquals(List.of(0.0, 900.0, 1800.0), chainages(runway.getCentreLine()));
            assertEquals(List.of(0.0, 300.0, 600.0), chainages(sample.end.getSiteProfile()));
        });
    }

    @Test
    void bearingsThatWereEnteredTurnAndOthersStayOpen() {
        onGrid();
        sample.other.setTrueBearingDeg(null);
        EditHarness.cycle(sample.project, MoveThreshold.to(sample.other, grid(1800, -1800)), () -> {
            assertEquals(135, sample.end.getTrueBearingDeg(), 1e-6);
            assertNull(sample.other.getTrueBearingDeg());
            assertEquals(Math.round(1800 * Math.sqrt(2) * 1000) / 1000.0, sample.aerodrome.getRunways().get(0).getLengthM());
        });
    }

    @Test
    void thresholdsDoNotComeToLieOnEachOther() {
        onGrid();
        EditHarness.fails(sample.project, EditException.class, MoveThreshold.to(sample.end, grid(1799.5, 0)), "on each other");
    }

    @Test
    void placesGoWhereTheirCopiesWentAndKeepTheRest() {
        onGrid();
        sample.end.getThreshold().setElevationM(50.0);
        Place copy = EcoreUtil.copy(sample.end.getThreshold());
        copy.setEastM(12.0);
        copy.setElevationM(99.0);
        EditHarness.cycle(sample.project, MovePlaces.of("Move", List.of(sample.end.getThreshold()), List.of(copy)), () -> {
            assertEquals(12, sample.end.getThreshold().getEastM());
            assertEquals(50, sample.end.getThreshold().getElevationM());
        });
    }

    @Test
    void aDirectionTurnsWithTheDesignatorThatNamesIt() {
        ApproachDirection direction = SlopewrightFactory.eINSTANCE.createApproachDirection();
        direction.setDesignator("H-250");
        direction.setTrueBearingDeg(250.0);
        sample.aerodrome.getHelipads().add(SlopewrightFactory.eINSTANCE.createHelipad());
        sample.aerodrome.getHelipads().get(0).getDirections().add(direction);
        Ids.assign(sample.project);
        EditHarness.cycle(sample.project, TurnDirection.to(direction, 365), () -> {
            assertEquals(5, direction.getTrueBearingDeg());
            assertEquals("H-005", direction.getDesignator());
        });
        EditHarness.fails(sample.project, EditException.class, TurnDirection.to(direction, Double.NaN), "finite");
    }
}
