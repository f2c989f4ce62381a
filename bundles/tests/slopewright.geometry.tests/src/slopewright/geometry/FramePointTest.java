package slopewright.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Points between points; worked by hand. */
class FramePointTest {

    @Test
    void aShareOfTheWayIsLinear() {
        FramePoint from = new FramePoint(-100, 10, 5);
        FramePoint to = new FramePoint(-200, 50, 1);
        assertEquals(from, from.towards(to, 0));
        assertEquals(to, from.towards(to, 1));
        assertEquals(new FramePoint(-125, 20, 4), from.towards(to, 0.25));
    }

    @Test
    void distanceInPlanLeavesHeightOut() {
        assertEquals(5, new FramePoint(0, 0, 0).planDistanceM(new FramePoint(3, -4, 99)), 1e-12);
        assertEquals(new FramePoint(1, 2, 8), new FramePoint(1, 2, 3).atHeight(8));
    }
}
