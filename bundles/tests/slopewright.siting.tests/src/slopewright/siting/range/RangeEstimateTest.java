package slopewright.siting.range;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.geometry.FramePoint;
import slopewright.geometry.Lengths;
import slopewright.siting.Families;
import slopewright.siting.Input;
import slopewright.siting.Siting;
import slopewright.siting.SitingRequest;
import slopewright.standards.Provenance;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** Estimates of whole layouts: which units must be told apart, which number decides, how well it is known. */
class RangeEstimateTest {

    private static RuleSet rules(String name) {
        return RuleSets.find(name).orElseThrow();
    }

    private static SitingRequest.Builder runway() {
        return SitingRequest.builder().set(Input.SLOPE, 3.0).set(Input.RUNWAY_WIDTH, 45.0).set(Input.CODE, 4.0).set(Input.EYE_HEIGHT, 15.0);
    }

    private static RangeEstimate estimate(String family, String ruleSet, RangeConditions conditions) {
        return RangeEstimate.of(Families.site(family, runway().build(), rules(ruleSet)), rules(ruleSet), conditions);
    }

    private static RangeConditions known(double intensityCd, double visibilityM) {
        return new RangeConditions(OptionalDouble.of(intensityCd), OptionalDouble.empty(), OptionalDouble.of(16), OptionalDouble.empty(),
                OptionalDouble.of(visibilityM));
    }

    /** Each range satisfies the law with its own threshold, the stricter of two texts by day and at night: 4.1e-4, 1e-5 and 8e-7 lx. */
    @Test
    void eachLightHasItsThreshold() {
        RangeEstimate found = estimate("four-unit-row", "icao:5th", known(15000, 20000));
        double[] thresholds = {4.1e-4, 1e-5, 8e-7};
        OptionalDouble[] ranges = {found.byDayM(), found.atTwilightM(), found.atNightM()};
        for (int i = 0; i < 3; i++) {
            double range = ranges[i].orElseThrow();
            assertEquals(thresholds[i], 15000 * Math.exp(Math.log(0.05) / 20000 * range) / (range * range), thresholds[i] * 1e-6);
        }
        assertTrue(found.byDayM().getAsDouble() < found.atTwilightM().getAsDouble());
        assertTrue(found.atTwilightM().getAsDouble() < found.atNightM().getAsDouble());
    }

    /** 9 m between neighbours: clearly apart to 10.3 km; at night the light is seen farther, so that the units decide. */
    @Test
    void theGoverningReasonIsNamed() {
        RangeEstimate found = estimate("four-unit-row", "icao:5th", known(15000, 20000));
        Separation separation = found.separation().orElseThrow();
        assertEquals(Separation.Kind.SIDE_BY_SIDE, separation.kind());
        assertEquals(9, separation.gapM(), 1e-9);
        assertEquals(10313, separation.clearRangeM(), 1);
        assertEquals(30940, separation.splitRangeM(), 1);
        assertEquals(separation.clearRangeM(), found.readableM(LightCondition.NIGHT).orElseThrow(), 1e-9);
        assertTrue(found.governing(LightCondition.NIGHT).contains("not clearly apart"));
        assertEquals(found.byDayM(), found.readableM(LightCondition.DAY));
        assertTrue(found.governing(LightCondition.DAY).contains("too weak"));
    }

    /** Bars count as one light each; the near and the far one must be told apart: 700 ft behind on the slope. */
    @Test
    void barsAreToldApartOnTheSlope() {
        Separation separation = estimate("two-bar", "faa", RangeConditions.unknown()).separation().orElseThrow();
        assertEquals(Separation.Kind.BEHIND, separation.kind());
        double spacing = Lengths.feetToMetres(700);
        assertEquals(spacing, separation.gapM(), 0.01);
        assertEquals(separation.gapM() * Math.sin(Math.toRadians(3)), separation.apparentGapM(), 1e-9);
        assertEquals(20.7, separation.splitRangeM() / 1852, 0.05, "20.7 NM at one minute, computed apart");
    }

    /** The legs of a T form stand 45 m and more apart; the four units of its bar show the same. */
    @Test
    void legsAreToldApartOnTheSlope() {
        Separation separation = estimate("t-form", "icao:5th", RangeConditions.unknown()).separation().orElseThrow();
        assertEquals(Separation.Kind.BEHIND, separation.kind());
        assertEquals(45, separation.gapM(), 1e-6);
    }

    @Test
    void whatIsFromMemoryIsMarked() {
        RangeEstimate found = estimate("four-unit-row", "icao:5th", RangeConditions.unknown());
        assertEquals(15000, found.intensityCd(LightCondition.DAY).orElseThrow());
        assertEquals(10000, found.visibilityM());
        assertEquals(Provenance.FROM_MEMORY, found.provenance());
        assertTrue(found.toConfirm().stream().anyMatch(citation -> citation.key().equals("table.fig-a2-23")));
        assertTrue(found.toConfirm().stream().anyMatch(citation -> citation.key().equals("range.eye-illuminance-night-lx")));
        assertFalse(found.toConfirm().stream().anyMatch(citation -> citation.key().equals("range.clear-separation-min")), "published");
        assertTrue(found.notes().get(0).english().contains("No visibility was given; 10000 m is taken"));
    }

    /** Whoever confirms the milder threshold has settled the question. */
    @Test
    void aConfirmedThresholdDecidesAlone() {
        RuleSet settled = rules("icao:5th").withConfirmation("range.eye-illuminance-day-lx", "someone");
        assertEquals(4.1e-4, EyeThreshold.of(rules("icao:5th"), LightCondition.DAY).strictest().value());
        assertEquals(1e-4, EyeThreshold.of(settled, LightCondition.DAY).strictest().value());
    }

    /** The number entered at the equipment stands for that of the table. */
    @Test
    void theEquipmentCounts() {
        RuleSet rules = rules("icao:5th");
        Siting siting = Families.site("four-unit-row", runway().build(), rules);
        assertEquals(20000, RangeEstimate.of(siting, rules, known(20000, 20000)).intensityCd(LightCondition.DAY).orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(strings = {"t-form", "t-form-abbreviated"})
    void withoutAnIntensityThereIsNoRangeButAReason(String family) {
        RangeEstimate found = estimate(family, "icao:5th", RangeConditions.unknown());
        assertTrue(found.byDayM().isEmpty() && found.readableM(LightCondition.NIGHT).isEmpty());
        assertTrue(found.notes().stream().anyMatch(note -> note.english().contains("No intensity is known")));
        assertEquals("no intensity is known", found.governing(LightCondition.DAY));
    }

    @Test
    void panelsAndSingleUnitsHaveNothingToTellApart() {
        Siting panels = Families.site("alignment-panels", runway().set(Input.PANEL_DISTANCE, 15.0).build(), rules("faa"));
        RangeEstimate found = RangeEstimate.of(panels, rules("faa"), known(1000, 1000));
        assertTrue(found.seen().isEmpty() && found.separation().isEmpty());
        assertTrue(found.notes().get(0).english().contains("Unlit panels"));
        assertTrue(estimate("tri-colour", "faa", known(6000, 10000)).separation().isEmpty());
    }

    /** Units on both sides are read side by side of their own, not across the runway. */
    @ParameterizedTest
    @CsvSource({"LEFT", "BOTH"})
    void sidesAreReadApart(slopewright.siting.Side side) {
        Siting siting = Families.site("four-unit-row", runway().side(side).build(), rules("icao:5th"));
        assertEquals(9, Separation.of(siting.units(), 3, 1, 3).orElseThrow().gapM(), 1e-9);
    }

    @Test
    void oneUnitAloneIsNeverApart() {
        Siting siting = Families.site("four-unit-row", runway().build(), rules("icao:5th"));
        assertTrue(Separation.of(List.of(siting.units().get(0)), 3, 1, 3).isEmpty());
        assertTrue(Separation.of(List.of(siting.units().get(0), siting.units().get(0).at(new FramePoint(0, 0, 0))), 3, 1, 3).isEmpty());
    }
}
