package slopewright.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static slopewright.siting.Trials.hasNote;
import static slopewright.siting.Trials.helipad;
import static slopewright.siting.Trials.note;
import static slopewright.siting.Trials.number;
import static slopewright.siting.Trials.rules;
import static slopewright.siting.Trials.runway;

import java.util.List;
import java.util.Map;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.geometry.FramePoint;
import slopewright.geometry.Profile;

/**
 * The least on-slope eye height over the threshold (MEHT), by the unit that bounds it. Everything is worked by hand from one formula: the
 * plane of a unit passes height = lens + distance along its axis x tan(angle). Rows: settings of Fig 5-20, 2 minutes off the edge that
 * bounds the signal (2.12 e); T form: 5.3.5.20 and Fig 5-17; US units: settings as in the US examples.
 */
class LeastEyeHeightTest {

    private static final double MINUTE = 1 / 60.0;

    private static double tan(double degrees) {
        return Math.tan(Math.toRadians(degrees));
    }

    private static Siting assess(Siting laid, SitingRequest request, String ruleSet, List<UnitPlan> units) {
        return Families.get(laid.family()).assess(request, rules(ruleSet), units, laid.unshifted());
    }

    private static UnitPlan lifted(UnitPlan unit, double byM) {
        return unit.at(new FramePoint(unit.place().alongM(), unit.place().rightM(), unit.place().heightM() + byM));
    }

    /** Unit B, set to 2 deg 50, bounds the signal of four units: its own lens counts, and no other unit's, up to where another bounds. */
    @ParameterizedTest
    @CsvSource({"B, 0.4, 15.4", "B, -0.3, 14.7", "A, 0.4, 15", "C, 0.4, 15", "D, 0.9, 15"})
    void unequalLensHeightsOfARowCountAtTheUnitThatBounds(String id, double byM, double mehtM) {
        SitingRequest request = runway().build();
        Siting level = Families.site("four-unit-row", request, rules("icao:5th"));
        assertEquals(15, level.mehtM(), 1e-9);
        List<UnitPlan> units = level.units().stream().map(unit -> unit.id().equals(id) ? lifted(unit, byM) : unit).toList();
        assertEquals(mehtM, assess(level, request, "icao:5th", units).mehtM(), 1e-9);
    }

    /** A lens of A so high that its edge passes over that of B: 306.70 m x (tan 2 deg 50 - tan 2 deg 30) = 1.788 m, then A bounds. */
    @Test
    void anotherUnitBoundsWhereItsEdgePassesHigher() {
        SitingRequest request = runway().build();
        Siting level = Families.site("four-unit-row", request, rules("icao:5th"));
        List<UnitPlan> units = level.units().stream().map(unit -> unit.id().equals("A") ? lifted(unit, 2.5) : unit).toList();
        Siting after = assess(level, request, "icao:5th", units);
        assertEquals(2.5 + level.distanceM() * tan(2.5 - 2 * MINUTE), after.mehtM(), 1e-9);
        assertEquals(2.5 - 2 * MINUTE, after.lowestOnSlopeDeg(), 1e-9);
    }

    /** Two rows read on slope only where both do: the higher B bounds. */
    @Test
    void ofTwoSidesTheHigherOneBounds() {
        SitingRequest request = runway().side(Side.BOTH).build();
        Siting level = Families.site("four-unit-row", request, rules("icao:5th"));
        assertEquals(15, level.mehtM(), 1e-9);
        List<UnitPlan> units = level.units().stream().map(unit -> unit.id().equals("B-right") ? lifted(unit, 0.25) : unit).toList();
        assertEquals(15.25, assess(level, request, "icao:5th", units).mehtM(), 1e-9);
    }

    /** A of two: 2 deg 45 less 2 minutes. */
    @Test
    void ofTwoUnitsAIsTheOne() {
        SitingRequest request = runway().build();
        Siting level = Families.site("two-unit-row", request, rules("icao:5th"));
        assertEquals(15 / tan(2.75 - 2 * MINUTE), level.distanceM(), 1e-9);
        List<UnitPlan> units = level.units().stream().map(unit -> lifted(unit, unit.id().equals("A") ? 0.1 : 0.7)).toList();
        assertEquals(15.1, assess(level, request, "icao:5th", units).mehtM(), 1e-9);
    }

    /** Bars alone from where the first fly-up unit, 45 m nearer, goes out: 15 - 45 tan 3 deg = 12.6416 m. */
    @Test
    void theBarsOfATFormAreSeenAloneFromLowerThanTheNominalHeight() {
        Siting form = Families.site("t-form", runway().build(), rules("icao:5th"));
        assertEquals(15, form.nominalEyeHeightM().orElseThrow(), 1e-9);
        assertEquals(12.6416, form.mehtM(), 5e-5);
        assertEquals(12.6416 - 3.5, Families.site("t-form", runway().set(Input.EYE_TO_WHEEL, 3.5).build(), rules("icao:5th"))
                .wheelClearanceM().orElseThrow(), 5e-5, "wheels clear by what the least signal leaves");
    }

    /** Any fly-up unit that stands too high bounds: the second at 151.22 m, 2 deg 55, passes 7.705 m and takes over once 4.94 m higher. */
    @Test
    void everyFlyUpUnitMayBound() {
        SitingRequest request = runway().build();
        Siting form = Families.site("t-form-abbreviated", request, rules("icao:5th"));
        for (String id : List.of("U1", "U2", "U3")) {
            UnitPlan unit = Trials.unit(form, id);
            double passed = unit.place().alongM() * tan(unit.settingDeg());
            double by = 13 - passed;
            List<UnitPlan> units = form.units().stream().map(old -> old.id().equals(id) ? lifted(old, by) : old).toList();
            Siting after = assess(form, request, "icao:5th", units);
            assertEquals(13, after.mehtM(), 1e-9, id);
            assertEquals(unit.settingDeg(), after.lowestOnSlopeDeg(), 1e-9, id);
        }
    }

    /** Whatever moves by how much: just above the bound the pattern reads on slope, just below it does not, nor anywhere lower. */
    @ParameterizedTest
    @CsvSource({"t-form, BOTH, 1.5, 0.03", "four-unit-row, RIGHT, 0.6, 0.15", "four-unit-row, BOTH, 0.6, 0.1",
            "two-unit-row, LEFT, 1, 0.2"})
    void theBoundIsWhereThePatternBegins(String family, Side side, double liftM, double raiseDeg) {
        Siting laid = Families.site(family, runway().side(side).build(), rules("icao:5th"));
        Random random = new Random(11);
        int bounded = 0;
        for (int trial = 0; trial < 200; trial++) {
            List<UnitPlan> units = laid.units().stream().map(unit -> lifted(unit, random.nextGaussian() * liftM)
                    .raised(random.nextGaussian() * raiseDeg)).toList();
            double least = Double.NaN;
            for (double height = 0; height < 40 && Double.isNaN(least); height += 0.002) {
                if (Signals.observe(Families.get(family), units, laid.reference(), new FramePoint(0, 0, height)).meaning()
                        == Meaning.ON_SLOPE) {
                    least = height;
                }
            }
            var found = Families.get(family).lowestOnSlope(units, 0);
            if (!Double.isNaN(least)) {
                assertEquals(least, found.orElseThrow().heightM(), 0.0021, "trial " + trial);
                bounded++;
            } else {
                assertTrue(found.isEmpty(), "nothing reads on slope");
            }
        }
        assertTrue(bounded > 100, bounded + " of 200 read on slope somewhere");
    }

    /** A unit that is wrong way round, shows another colour, or stands before the threshold makes of a row what its lights then show. */
    @ParameterizedTest
    @CsvSource({"four-unit-row, B, WHITE, RED", "four-unit-row, C, WHITE, RED", "four-unit-row, A, GREEN, WHITE",
            "four-unit-row, B, RED, GREEN", "four-unit-row, D, RED, GREEN", "two-unit-row, A, WHITE, RED", "two-unit-row, B, RED, GREEN"})
    void aUnitThatShowsSomethingElseBoundsNothing(String family, String id, String below, String above) {
        Siting laid = Families.site(family, runway().build(), rules("icao:5th"));
        List<UnitPlan> units = laid.units().stream().map(unit -> unit.id().equals(id) ? UnitPlan.twoColour(id, unit.bar(), unit.place(),
                unit.settingDeg(), 3, light(below), light(above)) : unit).toList();
        assertBoundedWhereSampled(family, laid, units);
    }

    @Test
    void aUnitBeforeTheThresholdIsSampledToo() {
        Siting laid = Families.site("four-unit-row", runway().build(), rules("icao:5th"));
        for (String id : List.of("A", "B", "C", "D")) {
            List<UnitPlan> units = laid.units().stream().map(unit -> unit.id().equals(id) ? unit.at(new FramePoint(-200,
                    unit.place().rightM(), unit.place().heightM())) : unit).toList();
            assertBoundedWhereSampled("four-unit-row", laid, units);
        }
    }

    private static Light light(String colour) {
        return Map.of("RED", Light.RED, "WHITE", Light.WHITE, "GREEN", Light.GREEN).get(colour);
    }

    private static void assertBoundedWhereSampled(String family, Siting laid, List<UnitPlan> units) {
        double least = Double.NaN;
        for (double height = 0; height < 60 && Double.isNaN(least); height += 0.002) {
            FramePoint eye = new FramePoint(0, 0, height);
            if (Signals.observe(Families.get(family), units, laid.reference(), eye).meaning() == Meaning.ON_SLOPE) {
                least = height;
            }
        }
        var found = Families.get(family).lowestOnSlope(units, 0);
        if (Double.isNaN(least) || least == 0) {
            assertTrue(found.isEmpty(), "nothing reads on slope, or all from the ground up does, but it is bounded at " + found);
        } else {
            assertEquals(least, found.map(OnSlopeBound::heightM).orElse(-1.0), 0.0021, units.toString());
        }
    }

    /** A red limit of 2 deg 48 lets the bars turn white only at 286.22 x tan 2.8 deg = 13.998 m, above where the fly-up units go out. */
    @Test
    void aRaisedRedLimitMayBound() {
        Siting form = Families.site("t-form", runway().option("red-limit-deg", "2.8").build(), rules("icao:5th"));
        assertEquals(15 / tan(3) * tan(2.8), form.mehtM(), 1e-9);
        assertEquals(2.8, form.lowestOnSlopeDeg(), 1e-9);
    }

    /**
     * An aeroplane with 3.6 m asks for 9 m (Table 5-2) over the least signal: 12.6 m, so 12.6 + 45 tan 3 deg = 14.9584 m on the slope, and
     * 285.42 m on level ground. With a red limit that bounds, 12.6 / tan 2.8 deg = 257.63 m.
     */
    @Test
    void aTFormForAnAeroplaneKeepsItsClearanceOnTheLeastSignal() {
        SitingRequest.Builder request = runway().set(Input.EYE_HEIGHT, null).set(Input.EYE_TO_WHEEL, 3.6);
        Siting form = Families.site("t-form", request.build(), rules("icao:5th"));
        assertEquals(12.6, form.mehtM(), 1e-9);
        assertEquals(9, form.wheelClearanceM().orElseThrow(), 1e-9);
        assertEquals(14.9584, form.nominalEyeHeightM().orElseThrow(), 5e-5);
        assertEquals(285.42, form.distanceM(), 0.005);
        assertTrue(!hasNote(form, "siting.note.eye-height-outside"), "12 to 16 m (Fig 5-17 a) is said of the nominal height");
        Siting raised = Families.site("t-form", request.option("red-limit-deg", "2.8").build(), rules("icao:5th"));
        assertEquals(12.6, raised.mehtM(), 1e-9);
        assertEquals(12.6 / tan(2.8), raised.distanceM(), 1e-6);
        Siting sloped = Families.site("t-form", request.option("red-limit-deg", null).set(Input.GROUND_SLOPE, 0.8).build(),
                rules("icao:5th"));
        assertEquals(12.6, sloped.mehtM(), 1e-9);
        assertEquals(14.9584 / (tan(3) + 0.008), sloped.distanceM(), 0.001);
    }

    /** 6.6 + 9 = 15.6 m ask for 17.96 m on the slope, outside the 12 to 16 m of Fig 5-17 a. */
    @Test
    void theUsualRangeIsJudgedOnTheNominalHeight() {
        Siting form = Families.site("t-form", runway().set(Input.EYE_HEIGHT, null).set(Input.EYE_TO_WHEEL, 6.6).build(), rules("icao:5th"));
        assertEquals(15.6 + 45 * tan(3), number(note(form, "siting.note.eye-height-outside"), 0), 1e-9);
        assertTrue(hasNote(Families.site("t-form", runway().set(Input.EYE_HEIGHT, 16.1).build(), rules("icao:5th")),
                "siting.note.eye-height-outside"), "its least height of 13.7 m lies within, the nominal one does not");
    }

    /** The near bar bounds the lower path of three, 2.75 deg; its own lens counts. */
    @Test
    void theNearBarBoundsTheLowerPath() {
        SitingRequest request = runway().set(Input.EYE_HEIGHT, 12.0).build();
        Siting bars = Families.site("three-bar", request, rules("faa"));
        assertEquals(12, bars.mehtM(), 1e-9);
        assertEquals(12 / tan(2.75), bars.distanceM(), 1e-9);
        List<UnitPlan> units = bars.units().stream().map(unit -> lifted(unit, unit.bar() == 1 ? 0.2 : 0.5)).toList();
        assertEquals(12.2, assess(bars, request, "faa", units).mehtM(), 1e-9);
    }

    /** A sector of 1 degree: the lower edge bounds at 2.5 deg; on the slope the eye is D tan 3 deg up. */
    @Test
    void theLowerEdgeOfASectorBounds() {
        Siting box = Families.site("tri-colour", runway().set(Input.ON_SLOPE_SECTOR, 1.0).build(), rules("faa"));
        assertEquals(15, box.mehtM(), 1e-9);
        assertEquals(15 / tan(2.5), box.distanceM(), 1e-9);
        assertEquals(15 / tan(2.5) * tan(3), box.nominalEyeHeightM().orElseThrow(), 1e-9);
    }

    /** At a helipad the path itself passes through the eye at the hover, 3.8 m; the sector reaches 22.5 minutes lower. */
    @Test
    void atAHelipadTheEyeIsOnThePath() {
        Siting box = Families.site("heliport-sector", helipad().build(), rules("icao:5th"));
        double distance = 3.8 / tan(6);
        assertEquals(3.8, box.nominalEyeHeightM().orElseThrow(), 1e-9);
        assertEquals(distance * tan(6 - 22.5 * MINUTE), box.mehtM(), 1e-9);
        Siting pair = Families.site("heliport-pair", helipad().build(), rules("faa"));
        assertEquals(distance * tan(6 - 15 * MINUTE), pair.mehtM(), 1e-9);
        Siting row = Families.site("four-unit-row", helipad().build(), rules("icao:5th"));
        assertEquals(distance * tan(6 - 22.5 * MINUTE), row.mehtM(), 1e-9);
    }

    /** Panels: from the least height the middle panel stands 1 minute below the line of the outer ones, an angle that is measured here. */
    @Test
    void panelsAreReadFromWhereTheEyeTellsThemApart() {
        SitingRequest request = runway().set(Input.PANEL_DISTANCE, 15.24).build();
        Siting panels = Families.site("alignment-panels", request, rules("faa"));
        assertEquals(15, panels.nominalEyeHeightM().orElseThrow(), 1e-9);
        double rear = 15 / tan(3);
        double front = Math.toDegrees(Math.atan((panels.mehtM() - 15.24 * tan(3)) / (rear - 15.24)));
        assertEquals(-1 * MINUTE, front - Math.toDegrees(Math.atan(panels.mehtM() / rear)), 1e-9);
        Siting aeroplane = Families.site("alignment-panels", runway().set(Input.EYE_HEIGHT, null).set(Input.EYE_TO_WHEEL, 2.0)
                .clearance(SitingRequest.Clearance.CHOSEN).set(Input.CHOSEN_CLEARANCE, 6.0).build(), rules("faa"));
        assertEquals(8, aeroplane.mehtM(), 1e-9);
        assertEquals(6, aeroplane.wheelClearanceM().orElseThrow(), 1e-9);
    }

    /**
     * A turned axis: the plane of a unit r metres to the right passes lens + (D cos t + r sin t) tan(angle) over the threshold (5.3.5.46
     * allows 5 degrees). Of two rows the one on the outside of the turn bounds.
     */
    @ParameterizedTest
    @ValueSource(doubles = {5, -5, 1.5})
    void theDistanceIsSolvedForTheTurnedUnits(double turnDeg) {
        double cos = Math.cos(Math.toRadians(turnDeg));
        double sin = Math.sin(Math.toRadians(turnDeg));
        Siting row = Families.site("four-unit-row", runway().set(Input.AXIS_TURN, turnDeg).set(Input.GROUND_SLOPE, 0.5).build(),
                rules("icao:5th"));
        assertEquals(15, row.mehtM(), 1e-9);
        double right = -(22.5 + 15 + 2 * 9);
        assertEquals((15 - right * sin * tan(2.8)) / (cos * tan(2.8) + 0.005), row.distanceM(), 1e-7);
        Siting both = Families.site("four-unit-row", runway().set(Input.AXIS_TURN, turnDeg).side(Side.BOTH).build(), rules("icao:5th"));
        assertEquals(15, both.mehtM(), 1e-9);
        assertEquals((15 - Math.abs(right * sin) * tan(2.8)) / (cos * tan(2.8)), both.distanceM(), 1e-7);
        for (String family : List.of("two-bar", "three-bar", "tri-colour", "pulsating")) {
            assertEquals(15, Families.site(family, runway().set(Input.AXIS_TURN, turnDeg).build(), rules("faa")).mehtM(), 1e-9, family);
        }
        Siting form = Families.site("t-form-abbreviated", runway().set(Input.EYE_HEIGHT, null).set(Input.EYE_TO_WHEEL, 3.6)
                .set(Input.AXIS_TURN, turnDeg).build(), rules("icao:5th"));
        assertEquals(12.6, form.mehtM(), 1e-9);
        UnitPlan first = Trials.unit(form, "U1");
        assertEquals(12.6, (first.place().alongM() * cos + first.place().rightM() * sin) * tan(3), 1e-9);
    }

    /** The eye at the hover is on the turned path through the lens on the axis: 3.8 / (cos t tan 6 deg). */
    @Test
    void theTurnedPathPassesThroughTheHover() {
        Siting box = Families.site("heliport-sector", helipad().set(Input.AXIS_TURN, 4.0).build(), rules("icao:5th"));
        assertEquals(3.8 / (Math.cos(Math.toRadians(4)) * tan(6)), box.distanceM(), 1e-9);
        assertEquals(3.8, box.nominalEyeHeightM().orElseThrow(), 1e-9);
    }

    /** Straight pieces: on a bumpy profile too the turned row gives its height, put back into the formula. */
    @Test
    void aTurnedRowOnAProfileGivesItsHeightBack() {
        Profile ground = Profile.of(new double[] {0, 200, 290, 330, 600}, new double[] {0, 0.8, -0.4, 1.1, 0.2});
        Siting row = Families.site("four-unit-row", runway().ground(ground).set(Input.AXIS_TURN, 3.0).build(), rules("icao:5th"));
        UnitPlan bounding = Trials.unit(row, "B");
        double axis = row.distanceM() * Math.cos(Math.toRadians(3)) + bounding.place().rightM() * Math.sin(Math.toRadians(3));
        assertEquals(15, ground.heightAt(row.distanceM()) + axis * tan(2.8), 1e-9);
        assertEquals(15, row.mehtM(), 1e-9);
    }

    /** 0 m from the hover point: the unit stands abeam; its planes pass the hover point at the height of its lens. */
    @ParameterizedTest
    @CsvSource({"heliport-sector, icao:5th", "four-unit-row, icao:5th", "heliport-pair, faa", "tri-colour, faa"})
    void anIndicatorMayStandAbeamOfTheHoverPoint(String family, String ruleSet) {
        SitingRequest request = helipad().set(Input.DISTANCE, 0.0).set(Input.LENS_HEIGHT, 0.7).build();
        Siting abeam = Families.site(family, request, rules(ruleSet));
        Siting beyond = Families.site(family, helipad().set(Input.DISTANCE, 50.0).set(Input.LENS_HEIGHT, 0.7).build(), rules(ruleSet));
        assertEquals(0, abeam.distanceM());
        assertEquals(0.7, abeam.mehtM(), 1e-9);
        assertEquals(0.7, abeam.nominalEyeHeightM().orElseThrow(), 1e-9);
        assertEquals(beyond.lowestOnSlopeDeg(), abeam.lowestOnSlopeDeg(), 1e-9, "the sectors are the same wherever it stands");
        assertEquals(beyond.surface().orElseThrow().slopeDeg(), abeam.surface().orElseThrow().slopeDeg(), 1e-9);
        assertTrue(hasNote(abeam, "siting.note.abeam-of-hover"));
        assertEquals(Meaning.ON_SLOPE, Signals.observe(abeam, new FramePoint(-500, 0, 0.7 + 500 * tan(6))).meaning());
        assertEquals(0.7, assess(abeam, request, ruleSet, abeam.units()).mehtM(), 1e-9);
        SitingException refused = assertThrows(SitingException.class,
                () -> Families.site(family, helipad().set(Input.DISTANCE, -1.0).build(), rules(ruleSet)));
        assertEquals("siting.refused.before-hover", refused.reason().key());
    }
}
