package slopewright.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;

import slopewright.geometry.FramePoint;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** How flashes and pulses go on and off; time is an input. */
class LightRhythmTest {

    private static final RuleSet ICAO = RuleSets.find("icao:5th").orElseThrow();
    private static final RuleSet FAA = RuleSets.find("faa").orElseThrow();
    private static final UnitPlan UNIT = new UnitPlan("1", 1, new FramePoint(0, 0, 0), 3, 0,
            List.of(new SectorEdge(2.5, 0, Light.PULSATING_RED, Light.RED), new SectorEdge(2.825, 0, Light.RED, Light.WHITE),
                    new SectorEdge(3.175, 0, Light.WHITE, Light.PULSATING_WHITE)));

    private static SeenUnit seen(Light light, double elevationDeg) {
        return new SeenUnit(UNIT, light, false, elevationDeg, OptionalDouble.empty());
    }

    /** RD 862/2009 Vol II 5.3.5.8 at least 2 Hz, 5.3.5.9 on as long as off: on for 0.25 s, off for 0.25 s. */
    @Test
    void aFlashIsOnAQuarterAndOffAQuarterOfASecond() {
        LightRhythm flash = LightRhythm.of("heliport-sector", ICAO, seen(Light.FLASHING_GREEN, 5));
        assertEquals(2, flash.rateHz());
        assertTrue(flash.source().orElseThrow().text().english().contains("5.3.5.8"), flash.source()::toString);
        assertFalse(flash.isAssumed());
        double phase = 0;
        StringBuilder onOff = new StringBuilder();
        for (int i = 0; i < 10; i++) {
            onOff.append(flash.isOn(phase) ? '1' : '0');
            phase = flash.advance(phase, 0.125);
        }
        assertEquals("1100110011", onOff.toString());
    }

    @Test
    void aRuleSetWithoutARateGetsTheUsualOneAndSaysSo() {
        LightRhythm flash = LightRhythm.of("heliport-sector", FAA, seen(Light.FLASHING_RED, 1));
        assertEquals(LightRhythm.USUAL_FLASH_HZ, flash.rateHz());
        assertTrue(flash.isAssumed());
        assertTrue(flash.source().isEmpty());
    }

    /** AIM: the rate rises with the distance from the path, no number given; assumed 1/s at the edge to 3/s at 1.5° from it. */
    @Test
    void pulsesQuickenAwayFromThePath() {
        assertEquals(1, LightRhythm.of("pulsating", FAA, seen(Light.PULSATING_WHITE, 3.175)).rateHz(), 1e-9);
        assertEquals(2, LightRhythm.of("pulsating", FAA, seen(Light.PULSATING_WHITE, 3.925)).rateHz(), 1e-9);
        assertEquals(3, LightRhythm.of("pulsating", FAA, seen(Light.PULSATING_WHITE, 9)).rateHz(), 1e-9);
        LightRhythm red = LightRhythm.of("pulsating", FAA, seen(Light.PULSATING_RED, 1.75));
        assertEquals(2, red.rateHz(), 1e-9);
        assertTrue(red.isAssumed(), "no source gives the number");
    }

    /** The pulse-light specification: 2.25 a second throughout; the pulse shrinks, here to half of each period 1.5° from the edge. */
    @Test
    void pulsesOfTheOtherFormShrink() {
        RuleSet other = FAA.withOverride("pulsating.pulse-form", 2, "test");
        LightRhythm pulse = LightRhythm.of("pulsating", other, seen(Light.PULSATING_WHITE, 4.675));
        assertEquals(2.25, pulse.rateHz());
        assertEquals(0.5, pulse.onShare(), 1e-9);
        assertEquals(0.05, LightRhythm.of("pulsating", other, seen(Light.PULSATING_WHITE, 9)).onShare(), 1e-9);
    }

    @Test
    void steadyAndDarkLightsHaveNoTime() {
        assertFalse(LightRhythm.of("pulsating", FAA, seen(Light.WHITE, 3)).isTimed());
        assertTrue(LightRhythm.STEADY.isOn(0.99));
        assertFalse(LightRhythm.of("pulsating", FAA, seen(Light.DARK, 3)).isOn(0));
    }
}
