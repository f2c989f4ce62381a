package slopewright.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Points, lines and areas against a surface with easy numbers: inner edge 60 m, 60 m before the threshold, 10 % on each side,
 * 1000 m long, rising 1 in 10. Expected numbers are worked by hand.
 */
class ProtectionSurfaceTest {

    private static final double ONE_IN_TEN_DEG = Math.toDegrees(Math.atan(0.1));
    private static final ProtectionSurface SURFACE = new ProtectionSurface(-60, 0, 60, 0.1, 1000, ONE_IN_TEN_DEG, 0);

    @ParameterizedTest
    @CsvFileSource(resources = "/cases/surface-points.csv")
    void pointsAreComparedWithinTheOutline(double alongM, double rightM, double heightM, String excessM) {
        var found = SURFACE.compare(new FramePoint(alongM, rightM, heightM), 0, 0);
        assertEquals(!"-".equals(excessM), SURFACE.contains(alongM, rightM));
        assertEquals(!"-".equals(excessM), found.isPresent());
        found.ifPresent(crossing -> assertEquals(Double.parseDouble(excessM), crossing.excessM(), 1e-9));
    }

    @Test
    void cornersRunFromTheInnerLeftAround() {
        List<FramePoint> corners = SURFACE.corners();
        assertPoint(-60, -30, 0, corners.get(0));
        assertPoint(-60, 30, 0, corners.get(1));
        assertPoint(-1060, 130, 100, corners.get(2));
        assertPoint(-1060, -130, 100, corners.get(3));
    }

    /** A clockwise turn seen from above brings the outward axis, which points back, to the left: 5 degrees, 1000 m, sine 0.0871557. */
    @Test
    void aTurnOfTheAxisGoesClockwiseAboutTheInnerEdge() {
        ProtectionSurface turned = SURFACE.withAxisTurnDeg(5);
        assertPoint(-60, 0, 0, turned.pointAt(0, 0));
        assertPoint(-60 - 996.1946981, -87.1557427, 100, turned.pointAt(1000, 0));
        assertEquals(1000, turned.outwardM(-60 - 996.1946981, -87.1557427), 1e-6);
        assertEquals(0, turned.offsetM(-60 - 996.1946981, -87.1557427), 1e-6);
        assertTrue(SURFACE.contains(-1050, 120));
        assertFalse(turned.contains(-1050, 120), "the turned surface leaves the object out");
        assertTrue(SURFACE.withAxisTurnDeg(-5).contains(-1050, 120));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-30, -5, 0, 0.5, 5, 17, 90})
    void placesGoThereAndBack(double turnDeg) {
        ProtectionSurface turned = SURFACE.withAxisTurnDeg(turnDeg);
        FramePoint there = turned.pointAt(321, -17);
        assertEquals(321, turned.outwardM(there.alongM(), there.rightM()), 1e-9);
        assertEquals(-17, turned.offsetM(there.alongM(), there.rightM()), 1e-9);
        assertEquals(32.1, there.heightM(), 1e-9);
    }

    @Test
    void aLineThatCrossesWithBothEndsOutsideIsFound() {
        List<FramePoint> wire = List.of(new FramePoint(-160, -500, 20), new FramePoint(-160, 500, 10));
        Penetration found = SURFACE.compareLine(wire, 0, 0).orElseThrow();
        assertEquals(-40, found.point().rightM(), 1e-9, "half the width 100 m out is 40 m; the wire is highest on the left");
        assertEquals(20 - 10 * 460 / 1000.0, found.point().heightM(), 1e-9);
        assertEquals(10, found.limitM(), 1e-9);
        assertEquals(5.4, found.excessM(), 1e-9);
    }

    @Test
    void aLineThatPassesByIsNot() {
        assertTrue(SURFACE.compareLine(List.of(new FramePoint(0, -10, 50), new FramePoint(-59, 10, 50)), 0, 0).isEmpty());
        assertTrue(SURFACE.compareLine(List.of(new FramePoint(-60, 31, 50), new FramePoint(-1060, 131, 50)), 0, 0).isEmpty());
        assertTrue(SURFACE.compareLine(List.of(), 0, 0).isEmpty());
    }

    @Test
    void aLineOfOnePointIsAPoint() {
        FramePoint mast = new FramePoint(-160, 0, 12);
        assertEquals(SURFACE.compare(mast, 0, 0), SURFACE.compareLine(List.of(mast), 0, 0));
    }

    @Test
    void theWorstPieceOfALineCounts() {
        List<FramePoint> road = List.of(new FramePoint(-360, 0, 25), new FramePoint(-260, 0, 21), new FramePoint(-160, 0, 14));
        Penetration found = SURFACE.compareLine(road, 0, 0).orElseThrow();
        assertPoint(-160, 0, 14, found.point());
        assertEquals(4, found.excessM(), 1e-9);
    }

    @Test
    void anAreaThatSwallowsTheSurfaceIsWorstAtTheInnerEdge() {
        List<FramePoint> forest = List.of(new FramePoint(1000, -1000, 3), new FramePoint(1000, 1000, 5), new FramePoint(-5000, 1000, 4),
                new FramePoint(-5000, -1000, 2));
        Penetration found = SURFACE.compareArea(forest, 0, 0).orElseThrow();
        assertEquals(5, found.excessM(), 1e-9, "the highest corner counts for the whole area");
        assertEquals(-60, found.point().alongM(), 1e-9);
        assertEquals(0, found.limitM(), 1e-9);
    }

    @Test
    void anAreaInsideIsWorstAtItsNearestCorner() {
        List<FramePoint> building = List.of(new FramePoint(-260, 10, 20), new FramePoint(-240, 20, 20), new FramePoint(-230, 5, 20));
        Penetration found = SURFACE.compareArea(building, 0, 0).orElseThrow();
        assertPoint(-230, 5, 20, found.point());
        assertEquals(3, found.excessM(), 1e-9);
    }

    /** Arms on both sides of the surface joined behind its start: nothing of the area lies under the surface. */
    @Test
    void anAreaThatOnlySurroundsTheInnerEdgeStaysOutside() {
        List<FramePoint> horseshoe = List.of(new FramePoint(0, -300, 9), new FramePoint(0, 300, 9), new FramePoint(-300, 300, 9),
                new FramePoint(-300, 200, 9), new FramePoint(-30, 200, 9), new FramePoint(-30, -200, 9), new FramePoint(-300, -200, 9),
                new FramePoint(-300, -300, 9));
        assertTrue(SURFACE.compareArea(horseshoe, 0, 0).isEmpty());
    }

    /** The mast may stand 5 m nearer, where the surface is 0.5 m lower, and 0.2 m higher. */
    @Test
    void surveyAccuracyCountsOnTheSafeSide() {
        FramePoint mast = new FramePoint(-160, 0, 9.8);
        assertEquals(-0.2, SURFACE.compare(mast, 0, 0).orElseThrow().excessM(), 1e-9);
        Penetration found = SURFACE.compare(mast, 5, 0.2).orElseThrow();
        assertEquals(9.5, found.limitM(), 1e-9);
        assertEquals(10, found.point().heightM(), 1e-9);
        assertEquals(0.5, found.excessM(), 1e-9);
    }

    /** The side runs 30 m + 10 % out: a radius of 5 m reaches it from 5 m away, square to the side. */
    @ParameterizedTest
    @CsvSource({"-160, 45.02, true", "-160, 45.03, false", "-55.01, 0, true", "-54.99, 0, false", "-1064.99, 0, true",
        "-1065.01, 0, false"})
    void aPointMayLieInsideByItsAccuracy(double alongM, double rightM, boolean inside) {
        assertTrue(SURFACE.compare(new FramePoint(alongM, rightM, 500), 0, 0).isEmpty());
        assertEquals(inside, SURFACE.compare(new FramePoint(alongM, rightM, 500), 5, 0).isPresent());
    }

    @Test
    void aFallingSurfaceIsWorstAtItsFarEnd() {
        ProtectionSurface falling = SURFACE.withSlopeDeg(-ONE_IN_TEN_DEG);
        assertEquals(10, falling.compare(new FramePoint(-160, 0, 0), 0, 0).orElseThrow().excessM(), 1e-9);
        assertEquals(10.5, falling.compare(new FramePoint(-160, 0, 0), 5, 0).orElseThrow().excessM(), 1e-9);
    }

    @Test
    void aMovedSurfaceKeepsItsShape() {
        ProtectionSurface moved = SURFACE.movedM(40);
        assertEquals(-20, moved.startAlongM(), 1e-12);
        assertEquals(SURFACE.heightAtOutwardM(70), moved.heightAtOutwardM(70), 0);
        assertEquals(SURFACE.halfWidthM(70), moved.halfWidthM(70), 0);
    }

    @Test
    void numbersOutOfRangeAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new ProtectionSurface(Double.NaN, 0, 60, 0.1, 1000, 2, 0));
        assertThrows(IllegalArgumentException.class, () -> new ProtectionSurface(0, 0, -1, 0.1, 1000, 2, 0));
        assertThrows(IllegalArgumentException.class, () -> new ProtectionSurface(0, 0, 60, -0.1, 1000, 2, 0));
        assertThrows(IllegalArgumentException.class, () -> new ProtectionSurface(0, 0, 60, 0.1, 0, 2, 0));
        assertThrows(IllegalArgumentException.class, () -> new ProtectionSurface(0, 0, 60, 0.1, 1000, 46, 0));
    }

    private static void assertPoint(double alongM, double rightM, double heightM, FramePoint found) {
        assertEquals(alongM, found.alongM(), 1e-6);
        assertEquals(rightM, found.rightM(), 1e-6);
        assertEquals(heightM, found.heightM(), 1e-6);
    }

    /** A point is a line that begins and ends at one place; both ways must say the same on and beside every edge. */
    @ParameterizedTest
    @ValueSource(doubles = {-7, 0, 2.5})
    void aPointIsALineWithoutLength(double turnDeg) {
        ProtectionSurface turned = SURFACE.withAxisTurnDeg(turnDeg).withSlopeDeg(turnDeg > 0 ? -1 : 2);
        Random random = new Random(11);
        int inside = 0;
        for (int i = 0; i < 5000; i++) {
            FramePoint point = new FramePoint(-1100 * random.nextDouble(), 300 * (random.nextDouble() - 0.5), 50 * random.nextDouble());
            double horizontal = i % 3 * 4.0;
            var asLine = turned.compareLine(List.of(point, point), horizontal, 0.5);
            assertEquals(asLine, turned.compare(point, horizontal, 0.5));
            inside += asLine.isPresent() ? 1 : 0;
        }
        assertTrue(inside > 1000, "many places lie inside");
    }

    /** What stands 7 m below a surface stands 12 m below it once it is raised by 5 m. */
    @Test
    void aRaisedSurfaceLeavesMoreRoom() {
        FramePoint point = new FramePoint(-160, 0, 3);
        assertEquals(-7, SURFACE.compare(point, 0, 0).orElseThrow().excessM(), 1e-9);
        assertEquals(-12, SURFACE.raisedM(5).compare(point, 0, 0).orElseThrow().excessM(), 1e-9);
    }
}
