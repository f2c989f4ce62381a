package slopewright.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static slopewright.siting.Trials.colours;
import static slopewright.siting.Trials.eye;
import static slopewright.siting.Trials.rules;
import static slopewright.siting.Trials.runway;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.geometry.FramePoint;

/** What an eye sees off the axis, in the change of colours, abeam and behind. */
class SignalsTest {

    private static final Siting ROW = Families.site("four-unit-row", runway().build(), rules("icao:5th"));

    /** Sectors are planes square to the azimuth: 800 m aside the slant distance is 28 % longer, the elevation along the axis the same. */
    @ParameterizedTest
    @ValueSource(doubles = {-800, -100, 0, 333, 800})
    void distanceAlongTheAxisCountsNotTheSlant(double asideM) {
        FramePoint onAxis = eye(ROW, 1000, 2.85);
        FramePoint aside = new FramePoint(onAxis.alongM(), asideM, onAxis.heightM());
        assertEquals("RRWW", colours(Signals.observe(ROW, aside)));
        double slant = Math.toDegrees(Math.atan(aside.heightM() / Math.hypot(1000, 800)));
        assertTrue(slant < 2.5, "by the slant distance at 800 m it would read four reds");
        Observation seen = Signals.observe(ROW, aside);
        seen.seen().forEach(seenUnit -> assertEquals(2.85, seenUnit.elevationDeg(), 1e-9));
        assertEquals(2.85, seen.elevationDeg(), 1e-9);
    }

    /** A unit turned by 10 degrees clockwise looks to the left of the approach: (1000 cos 10 - 200 sin 10) m for an eye 200 m right. */
    @Test
    void aTurnedUnitHasItsOwnPlane() {
        UnitPlan unit = new UnitPlan("1", 1, new FramePoint(300, -30, 1), 3, 10, List.of(new SectorEdge(3, 3, Light.RED, Light.WHITE)));
        double distance = 1000 * Math.cos(Math.toRadians(10)) - 200 * Math.sin(Math.toRadians(10));
        FramePoint eye = new FramePoint(-700, 170, 51);
        assertEquals(distance, unit.axisDistanceM(eye), 1e-9);
        assertEquals(Math.toDegrees(Math.atan(50 / distance)), unit.elevationDeg(eye), 1e-9);
        assertEquals(Light.WHITE, unit.lightAt(unit.elevationDeg(eye)), "3.05 degrees along the turned axis, 2.86 along the centre line");
        UnitPlan mirrored = unit.mirrored();
        assertEquals(-10, mirrored.azimuthDeg());
        assertEquals(unit.elevationDeg(eye), mirrored.elevationDeg(new FramePoint(-700, -170, 51)), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"310", "306.7", "2000"})
    void abeamAndBehindThereIsNoSignal(double alongM) {
        Observation seen = Signals.observe(ROW, new FramePoint(Math.max(alongM, ROW.distanceM()), 20, 30));
        assertEquals(Meaning.OUTSIDE, seen.meaning());
        assertTrue(Double.isNaN(seen.elevationDeg()));
        seen.seen().forEach(seenUnit -> assertEquals(Light.DARK, seenUnit.light()));
    }

    /** 3 minutes wide, half on each side of the setting (Annex 14 5.3.5.29 as read in Spain RD 862/2009). */
    @ParameterizedTest
    @CsvSource({"168.4, false", "168.6, true", "170, true", "171.4, true", "171.6, false"})
    void theChangeOfColoursHasAWidth(double elevationMin, boolean inTransition) {
        Observation seen = Signals.observe(ROW, eye(ROW, 3000, elevationMin / 60));
        assertEquals(inTransition, seen.seen().get(2).inTransition());
        assertFalse(seen.seen().get(0).inTransition());
    }

    @Test
    void aPatternThatNoRowShowsHasNoMeaning() {
        IndicatorFamily row = Families.get("four-unit-row");
        List<SeenUnit> seen = Signals.observe(ROW, eye(ROW, 1000, 2.9)).seen();
        List<SeenUnit> reversed = List.of(seen.get(3), seen.get(2), seen.get(1), seen.get(0));
        assertEquals(Meaning.OUTSIDE, row.meanings(reversed).get(""));
        assertEquals(Meaning.OUTSIDE, row.meanings(List.of()).get(""));
    }

    @Test
    void twoRowsMustAgree() {
        Siting both = Families.site("four-unit-row", runway().side(Side.BOTH).build(), rules("icao:5th"));
        assertEquals(Meaning.ON_SLOPE, Signals.observe(both, eye(both, 3000, 3)).meaning());
        List<UnitPlan> sagging = both.units().stream().map(unit -> unit.place().rightM() > 0 ? unit.raised(0.5) : unit).toList();
        Observation seen = Signals.observe(Families.get("four-unit-row"), sagging, both.reference(), eye(both, 3000, 3));
        assertEquals(Meaning.OUTSIDE, seen.meaning());
    }

    /** A near bar that is red under a far bar that is white is no signal of a healthy system. */
    @Test
    void barsInTheWrongOrderAreRemarked() {
        Siting bars = Families.site("two-bar", runway().build(), rules("faa"));
        List<UnitPlan> sunk = bars.units().stream().map(unit -> unit.bar() == 1 ? unit.raised(3) : unit.raised(-1)).toList();
        Observation seen = Signals.observe(Families.get("two-bar"), sunk, bars.reference(), eye(bars, 3000, 3));
        assertEquals(Meaning.OUTSIDE, seen.meaning());
        assertEquals(1, seen.remarks().size());
    }

    /** AIM 2-1-2: sinking from green to red a dark amber may appear, which looks like the amber of too high. */
    @Test
    void darkAmberIsRemarkedOnlyBelow() {
        Siting box = Families.site("tri-colour", runway().set(Input.ON_SLOPE_SECTOR, 1.0).build(), rules("faa"));
        assertEquals(1, Signals.observe(box, eye(box, 1000, 2.5)).remarks().size());
        assertEquals(0, Signals.observe(box, eye(box, 1000, 3.5)).remarks().size());
        assertEquals(0, Signals.observe(box, eye(box, 1000, 3)).remarks().size());
    }

    /** Steady white on, steady red slightly below, pulsating red and white beyond (AIM 2-1-2 e); widths entered or from memory. */
    @ParameterizedTest
    @CsvSource({"3.3, PULSATING_WHITE, ABOVE", "3.1, WHITE, ON_SLOPE", "2.9, WHITE, ON_SLOPE", "2.7, RED, BELOW",
        "2.2, PULSATING_RED, WELL_BELOW"})
    void sectorsOfThePulsatingUnit(double elevationDeg, String light, Meaning meaning) throws ReflectiveOperationException {
        Siting box = Families.site("pulsating", runway().set(Input.ON_SLOPE_SECTOR, 0.5).build(), rules("faa"));
        Observation seen = Signals.observe(box, eye(box, 1000, elevationDeg));
        assertEquals(Light.class.getField(light).get(null), seen.seen().get(0).light());
        assertEquals(meaning, seen.meaning());
    }

    @Test
    void brokenSectorsAreRefused() {
        FramePoint place = new FramePoint(0, 0, 0);
        SectorEdge low = new SectorEdge(2, 3, Light.RED, Light.GREEN);
        SectorEdge high = new SectorEdge(3, 3, Light.WHITE, Light.DARK);
        assertThrows(IllegalArgumentException.class, () -> new UnitPlan("1", 1, place, 3, 0, List.of(low, high)), "a gap");
        assertThrows(IllegalArgumentException.class, () -> new UnitPlan("1", 1, place, 3, 0, List.of(low, low)), "an overlap");
        assertThrows(IllegalArgumentException.class, () -> new SectorEdge(Double.NaN, 3, Light.RED, Light.WHITE));
        assertThrows(IllegalArgumentException.class, () -> new SectorEdge(3, -1, Light.RED, Light.WHITE));
    }

    /**
     * Near red, middle white, far red (US pack 2.2: a bar farther on is set higher, so the middle one cannot be white while the near one is
     * red): no pattern of a healthy system, so neither path is told, though middle and far alone would read on the upper one.
     */
    @Test
    void barsOutOfOrderTellNoPathAtAll() {
        List<SeenUnit> seen = List.of(bar(1, Light.RED), bar(2, Light.WHITE), bar(3, Light.RED));
        assertEquals(Map.of("lower", Meaning.OUTSIDE, "upper", Meaning.OUTSIDE), Families.get("three-bar").meanings(seen));
        List<SeenUnit> healthy = List.of(bar(1, Light.WHITE), bar(2, Light.WHITE), bar(3, Light.RED));
        assertEquals(Map.of("lower", Meaning.ABOVE, "upper", Meaning.ON_SLOPE), Families.get("three-bar").meanings(healthy));
    }

    private static SeenUnit bar(int number, Light light) {
        UnitPlan unit = UnitPlan.twoColour("B" + number, number, new FramePoint(200.0 * number, 40, 0), 3, 3, Light.RED, Light.WHITE);
        return new SeenUnit(unit, light, false, 3, OptionalDouble.empty());
    }
}
