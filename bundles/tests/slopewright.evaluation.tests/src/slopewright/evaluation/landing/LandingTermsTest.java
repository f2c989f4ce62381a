package slopewright.evaluation.landing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;

import slopewright.siting.SitingException;
import slopewright.siting.descent.DescentSlope;

/** Wind, speed and sectors of landing directions against hand arithmetic. */
class LandingTermsTest {

    @Test
    void windHasAPartAgainstAndAPartAcross() {
        // 20 kt from 090°: landing toward 060° it blows 30° off the nose from the right: 20 cos 30° = 17.32, 20 sin 30° = 10
        LandingWind wind = new LandingWind(90, 20);
        assertEquals(17.3205, wind.headwindKt(60), 1e-4);
        assertEquals(10, wind.crosswindKt(60), 1e-9);
        assertEquals(-20, wind.headwindKt(270), 1e-9);
        assertEquals(-20, wind.crosswindKt(180), 1e-9);
        assertThrows(IllegalArgumentException.class, () -> new LandingWind(90, -1));
    }

    @Test
    void theDescentFollowsFromTheSpeed() {
        // over the ground: 80 kt × 101.2686 ft/min a knot × tan 6° = 851.5 ft/min
        assertEquals(80 * 1852 / 0.3048 / 60 * Math.tan(Math.toRadians(6)),
                new LandingSpeed(LandingSpeed.Kind.GROUND, 80).descentFtMin(6, 20).orElseThrow(), 1e-6);
        // still air: along the path, 80 × 101.2686 × sin 6° = 846.8 ft/min
        LandingSpeed air = new LandingSpeed(LandingSpeed.Kind.AIR, 80);
        assertEquals(80 * 1852 / 0.3048 / 60 * Math.sin(Math.toRadians(6)), air.descentFtMin(6, 0).orElseThrow(), 1e-6);
        // with wind it is the inverse of the slope that follows from speed, wind and descent
        for (double wind : new double[] {-15, 10, 25}) {
            double descent = air.descentFtMin(6, wind).orElseThrow();
            assertEquals(6, DescentSlope.ofAirSpeed(80, OptionalDouble.of(wind), descent).slopeDeg(), 1e-9);
        }
        assertEquals(OptionalDouble.empty(), air.descentFtMin(6, 90));
        assertThrows(SitingException.class, () -> new LandingSpeed(LandingSpeed.Kind.AIR, 0));
    }

    @Test
    void sectorsTurnTheShortWay() {
        ClearSector overNorth = new ClearSector(350, 20, 5);
        assertEquals(31, overNorth.count());
        assertTrue(overNorth.holds(0));
        assertFalse(overNorth.holds(21));
        assertEquals(10, overNorth.turnDeg(30), 1e-9);
        assertEquals(20, overNorth.nearestDeg(30), 1e-9);
        assertEquals(350, overNorth.nearestDeg(300), 1e-9);
        assertEquals("020° to 055° is clear from 5°", new ClearSector(20, 55, 5).message(0).english());
        assertEquals("018° to 053° is clear from 5.5°", new ClearSector(20, 55, 5.5).message(2).english());
    }
}
