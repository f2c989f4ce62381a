package slopewright.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Lines of sight fall away with the Earth, surfaces do not. */
class CurvatureTest {

    /** 15 000² / (2 × 6 371 009) m = 17.658 m, worked by hand; printed as 17.7 m. */
    @Test
    void theGroundDropsAtFifteenKilometres() {
        assertEquals(17.658, Curvature.dropM(15000, 0), 0.0005);
        assertEquals(17.658 * 0.87, Curvature.dropM(15000, Curvature.USUAL_REFRACTION), 0.0005);
        assertEquals(0, Curvature.dropM(0, 0));
    }

    /** A level obstacle 15 km out is compared at its full height: 300 + 14 940 × tan 1.93° would be 17.7 m wrong otherwise. */
    @Test
    void aSurfaceIsNeverLoweredByCurvature() {
        ProtectionSurface surface = new ProtectionSurface(-60, 0, 300, 0.15, 15000, 1.93, 0);
        double limit = 14940 * Math.tan(Math.toRadians(1.93));
        FramePoint obstacle = new FramePoint(-15000, 0, limit + 1);
        Penetration found = surface.compare(obstacle, 0, 0).orElseThrow();
        assertEquals(1, found.excessM(), 1e-9);
        assertEquals(limit, found.limitM(), 1e-9);
    }
}
