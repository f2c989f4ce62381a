package slopewright.siting.range;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.geometry.FramePoint;
import slopewright.siting.Families;
import slopewright.siting.Light;
import slopewright.siting.SectorEdge;
import slopewright.siting.UnitPlan;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/**
 * Intensity toward an eye, with the contours of Annex 14 Vol I, 9th ed., Fig A2-22 and A2-23, and Vol II, 4th ed., Fig 5-11. The unit
 * stands at the origin, the eye 1000 m before it, so that an angle a to the side or above is a distance of 1000 m times tan a.
 */
class LightOutputTest {
    private static final RuleSet RULES = RuleSets.find("icao:9th").orElseThrow();

    private static FramePoint eye(double sideDeg, double elevationDeg) {
        return new FramePoint(-1000, 1000 * Math.tan(Math.toRadians(sideDeg)), 1000 * Math.tan(Math.toRadians(elevationDeg)));
    }

    private static UnitPlan row(double settingDeg, double turnDeg) {
        return UnitPlan.twoColour("A", 1, new FramePoint(0, 0, 0), settingDeg, 3, Light.RED, Light.WHITE).turned(turnDeg);
    }

    private static RangeConditions entered(OptionalDouble red, OptionalDouble white, OptionalDouble night) {
        return new RangeConditions(red, white, OptionalDouble.empty(), night, OptionalDouble.empty());
    }

    private static OptionalDouble toward(String family, RangeConditions known, UnitPlan unit, FramePoint eye, LightCondition condition) {
        return LightOutput.of(Families.get(family), RULES, known).toward(unit, eye, condition).intensityCd();
    }

    @ParameterizedTest
    @CsvSource({
        // red below the setting of 3 degrees: within 2 degrees, 2.2 degrees below, 5.5 and 7.9 to the side
        "3, 0, 0, 2.5, 15000", "3, 0, 0, 0.8, 10000", "3, 0, 5.5, 2.9, 7000", "3, 0, 7.9, 2.9, 4000",
        // an axis turned by 5 degrees clockwise, seen from above to the left of the landing pilot: an eye there stands on it
        "3, 5, -5, 2.5, 15000", "3, 5, 0, 2.5, 7000",
        // white above the setting: twice the red at least (note 2)
        "3, 0, 0, 3.5, 30000", "3, 0, 7.9, 3.1, 8000"})
    void theContourAroundTheDirectionCounts(double settingDeg, double turnDeg, double sideDeg, double elevationDeg, double candela) {
        OptionalDouble found = toward("four-unit-row", RangeConditions.unknown(), row(settingDeg, turnDeg), eye(sideDeg, elevationDeg),
                LightCondition.DAY);
        assertEquals(candela, found.orElseThrow());
    }

    @ParameterizedTest
    @CsvSource({"8.1, 2.9", "-8.1, 2.9", "0, 6.6"})
    void outsideTheLastContourNothingIsKnown(double sideDeg, double elevationDeg) {
        assertTrue(toward("four-unit-row", RangeConditions.unknown(), row(3, 0), eye(sideDeg, elevationDeg), LightCondition.DAY).isEmpty());
    }

    /** A unit of 20 000 cd on the axis has at least the contour off it; of one of 12 000 cd, below the table, nothing is known there. */
    @Test
    void anEnteredIntensityIsThatOnTheAxis() {
        RangeConditions strong = entered(OptionalDouble.of(20000), OptionalDouble.empty(), OptionalDouble.empty());
        RangeConditions weak = entered(OptionalDouble.of(12000), OptionalDouble.empty(), OptionalDouble.empty());
        assertEquals(20000, toward("four-unit-row", strong, row(3, 0), eye(0, 2.5), LightCondition.DAY).orElseThrow());
        assertEquals(10000, toward("four-unit-row", strong, row(3, 0), eye(3, 2.5), LightCondition.DAY).orElseThrow());
        assertEquals(12000, toward("four-unit-row", weak, row(3, 0), eye(0, 2.5), LightCondition.DAY).orElseThrow());
        assertTrue(toward("four-unit-row", weak, row(3, 0), eye(3, 2.5), LightCondition.DAY).isEmpty());
    }

    /** 20 000 cd red and 50 000 cd white, 5 per cent of it at night. */
    @Test
    void whiteAndTheSettingForTheNightCount() {
        RangeConditions known = entered(OptionalDouble.of(20000), OptionalDouble.of(50000), OptionalDouble.of(5));
        assertEquals(50000, toward("four-unit-row", known, row(3, 0), eye(0, 3.5), LightCondition.DAY).orElseThrow());
        assertEquals(2500, toward("four-unit-row", known, row(3, 0), eye(0, 3.5), LightCondition.NIGHT).orElseThrow(), 1e-9);
        assertEquals(500, toward("four-unit-row", known, row(3, 0), eye(3, 2.5), LightCondition.NIGHT).orElseThrow(), 1e-9);
    }

    /** The T form has other contours by night, and red through a filter of 15 per cent at least. */
    @Test
    void theTFormHasContoursForTheNight() {
        UnitPlan bar = row(1.9, 0);
        assertEquals(80000, toward("t-form", RangeConditions.unknown(), bar, eye(0.5, 3), LightCondition.DAY).orElseThrow());
        assertEquals(24000, toward("t-form", RangeConditions.unknown(), bar, eye(4.2, 3), LightCondition.DAY).orElseThrow());
        assertEquals(100, toward("t-form", RangeConditions.unknown(), bar, eye(4.2, 3), LightCondition.NIGHT).orElseThrow());
        assertEquals(12000, toward("t-form", RangeConditions.unknown(), bar, eye(0.5, 1), LightCondition.DAY).orElseThrow(), 1e-9);
        assertTrue(toward("t-form", RangeConditions.unknown(), bar, eye(7.6, 3), LightCondition.NIGHT).isEmpty());
    }

    /** Green and red alike, ellipses around the setting; a flashing light has the contours of its colour. */
    @Test
    void theSectorUnitHasEllipses() {
        UnitPlan unit = new UnitPlan("1", 1, new FramePoint(0, 0, 0), 6, 0, List.of(
                new SectorEdge(5.375, 3, Light.FLASHING_RED, Light.RED), new SectorEdge(5.625, 3, Light.RED, Light.GREEN),
                new SectorEdge(6.375, 3, Light.GREEN, Light.FLASHING_GREEN)));
        assertEquals(9000, toward("heliport-sector", RangeConditions.unknown(), unit, eye(0, 6), LightCondition.DAY).orElseThrow());
        // (5/6)^2 + (2/4)^2 = 0.944
        assertEquals(6375, toward("heliport-sector", RangeConditions.unknown(), unit, eye(5, 4), LightCondition.DAY).orElseThrow());
        assertEquals(375, toward("heliport-sector", RangeConditions.unknown(), unit, eye(0, 15.9), LightCondition.DAY).orElseThrow());
        assertTrue(toward("heliport-sector", RangeConditions.unknown(), unit, eye(0, 16.1), LightCondition.DAY).isEmpty());
    }

    /** Without contours an entered number holds within the entered width of the beam, and nowhere without a width. */
    @Test
    void withoutContoursTheBeamBoundsTheNumber() {
        RuleSet us = RuleSets.find("faa:2010").orElseThrow();
        RangeConditions known = new RangeConditions(OptionalDouble.of(6000), OptionalDouble.empty(), OptionalDouble.of(16),
                OptionalDouble.empty(), OptionalDouble.empty());
        LightOutput output = LightOutput.of(Families.get("two-bar"), us, known);
        assertEquals(6000, output.toward(row(3, 0), eye(7.9, 2.5), LightCondition.DAY).intensityCd().orElseThrow());
        assertTrue(output.toward(row(3, 0), eye(8.1, 2.5), LightCondition.DAY).intensityCd().isEmpty());
        RangeConditions widthless = entered(OptionalDouble.of(6000), OptionalDouble.empty(), OptionalDouble.empty());
        assertTrue(LightOutput.of(Families.get("two-bar"), us, widthless).toward(row(3, 0), eye(0, 2.5), LightCondition.DAY).intensityCd()
                .isEmpty());
    }
}
