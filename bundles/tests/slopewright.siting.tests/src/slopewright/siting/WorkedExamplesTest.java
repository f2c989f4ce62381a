package slopewright.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static slopewright.siting.Trials.colours;
import static slopewright.siting.Trials.eye;
import static slopewright.siting.Trials.hasNote;
import static slopewright.siting.Trials.rules;
import static slopewright.siting.Trials.runway;
import static slopewright.siting.Trials.unit;

import java.util.Locale;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.geometry.FramePoint;

/** Rows and T forms under the ICAO rule set, to the printed digit; every case file names its sources. */
class WorkedExamplesTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/cases/distances.csv")
    void distancesOfRows(String family, double eyeToWheelM, SitingRequest.Clearance clearance, double eyeHeightM, double distanceM) {
        SitingRequest request = runway().set(Input.EYE_HEIGHT, null).set(Input.EYE_TO_WHEEL, eyeToWheelM).clearance(clearance).build();
        Siting siting = Families.site(family, request, rules("icao:5th"));
        assertEquals(eyeHeightM, siting.mehtM(), 0.005);
        assertEquals(distanceM, siting.distanceM(), 0.005);
        assertEquals(eyeHeightM - eyeToWheelM, siting.wheelClearanceM().orElseThrow(), 1e-9);
        assertEquals(clearance == SitingRequest.Clearance.MINIMUM,
                hasNote(siting, "siting.note.minimum-clearance"));
    }

    /** Without the allowance of 2 minutes the first line of the table would read 315.81 m. */
    @Test
    void theAllowanceOfTwoMinutesIsTaken() {
        SitingRequest request = runway().set(Input.EYE_HEIGHT, null).set(Input.EYE_TO_WHEEL, 6.63).build();
        Siting with = Families.site("four-unit-row", request, rules("icao:5th"));
        assertEquals(2.8, with.lowestOnSlopeDeg(), 1e-9, "2 deg 50 min less 2 min");
        assertTrue(Math.abs(with.distanceM() - 315.81) > 3);
        Siting without = Families.site("four-unit-row", request,
                rules("icao:5th").withOverride("four-unit-row.boundary-allowance-min", 0, "negative test"));
        assertEquals(315.81, without.distanceM(), 0.005);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/cases/lateral.csv")
    void placesBesideTheRunway(String family, double widthM, String layout, String expected) {
        SitingRequest request = runway().set(Input.RUNWAY_WIDTH, widthM).option("layout", layout).build();
        Siting siting = Families.site(family, request, rules("icao:5th"));
        assertEquals(expected, siting.units().stream()
                .map(unit -> unit.id() + " " + String.format(Locale.ROOT, "%.1f", -unit.place().rightM()).replace(".0", ""))
                .collect(Collectors.joining("|")));
    }

    /** The reduced layout is the one for code 1 and 2 (from memory, Fig 5-19 f). */
    @ParameterizedTest
    @CsvSource({"1, 25", "2, 25", "3, 30", "4, 30"})
    void theCodeNumberChoosesTheLayout(double code, double innerM) {
        Siting siting = Families.site("four-unit-row", runway().set(Input.RUNWAY_WIDTH, 30.0).set(Input.CODE, code).build(),
                rules("icao:5th"));
        assertEquals(-innerM, siting.units().get(0).place().rightM(), 1e-9);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/cases/row-signals.csv")
    void signalsOfRows(String family, double elevationMin, String colours, Meaning meaning) {
        Siting siting = Families.site(family, runway().build(), rules("icao:5th"));
        for (double distance : new double[] {300, 2000, 9000}) {
            Observation seen = Signals.observe(siting, eye(siting, distance, elevationMin / 60));
            assertEquals(colours, colours(seen));
            assertEquals(meaning, seen.meaning());
            assertEquals(elevationMin / 60, seen.elevationDeg(), 1e-9);
        }
    }

    /** Settings at 3 degrees: 2 deg 30, 2 deg 50, 3 deg 10, 3 deg 30 (secondary); other slopes and steep differences from memory. */
    @ParameterizedTest
    @CsvSource({"3, 2.5|2.8333333333|3.1666666667|3.5", "3.5, 3|3.3333333333|3.6666666667|4", "4, 3.5|3.8333333333|4.1666666667|4.5",
        "5, 4.25|4.75|5.25|5.75", "7, 6.25|6.75|7.25|7.75", "8, 6.5|7.5|8.5|9.5"})
    void settingsOfARowOfFour(double slopeDeg, String outerToInner) {
        Siting siting = Families.site("four-unit-row", runway().set(Input.SLOPE, slopeDeg).build(), rules("icao:5th"));
        String[] expected = outerToInner.split("\\|");
        for (int i = 0; i < 4; i++) {
            assertEquals(Double.parseDouble(expected[i]), unit(siting, String.valueOf((char) ('A' + i))).settingDeg(), 1e-9);
        }
        assertTrue(unit(siting, "A").place().rightM() < unit(siting, "D").place().rightM(), "A stands farthest out, on the left");
    }

    /** Two units: 15 minutes to each side; 45 minutes apart over 4 degrees, 1 degree over 7 (from memory). */
    @ParameterizedTest
    @CsvSource({"3, 2.75, 3.25", "5, 4.625, 5.375", "8, 7.5, 8.5"})
    void settingsOfARowOfTwo(double slopeDeg, double outerDeg, double innerDeg) {
        Siting siting = Families.site("two-unit-row", runway().set(Input.SLOPE, slopeDeg).build(), rules("icao:5th"));
        assertEquals(outerDeg, unit(siting, "A").settingDeg(), 1e-9);
        assertEquals(innerDeg, unit(siting, "B").settingDeg(), 1e-9);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/cases/t-form.csv")
    void eyeHeightsOfTheTForm(String unit, double cutOffMin, double placeM, double heightM, double heightFt, double heightAt280M) {
        double tan = Math.tan(Math.toRadians(cutOffMin / 60));
        Siting solved = Families.site("t-form", runway().build(), rules("icao:5th"));
        assertEquals(286.22, solved.distanceM(), 0.005);
        assertEquals(15, solved.nominalEyeHeightM().orElseThrow(), 1e-9);
        assertEquals(12.64, solved.mehtM(), 0.005, "bars alone from where the first fly-up unit, 45 m nearer, goes out: 15 - 45 tan 3 deg");
        Siting drawn = Families.site("t-form", runway().set(Input.DISTANCE, 280.0).build(), rules("icao:5th"));
        for (String side : new String[] {"-left", "-right"}) {
            UnitPlan one = unit(solved, unit + side);
            assertEquals(placeM, one.place().alongM(), 0.005);
            assertEquals(heightM, one.place().alongM() * tan, 0.005);
            assertEquals(heightFt, one.place().alongM() * tan / Trials.FOOT, 0.05);
            assertEquals(heightAt280M, unit(drawn, unit + side).place().alongM() * tan, 0.005);
            assertTrue(one.edges().stream().anyMatch(edge -> Math.abs(edge.angleDeg() * 60 - cutOffMin) < 1e-9), "the unit cuts off there");
        }
    }

    /** Published eye heights over the threshold for 15 m (Annex 14 5.3.5.9 note): bars alone, then 1, 2 and 3 fly-down units. */
    @ParameterizedTest
    @CsvSource({"13.5, 0, 0", "16.5, 0, 0", "18, 0, 1", "21.5, 0, 1", "24, 0, 2", "27.5, 0, 2", "30, 0, 3", "12, 1, 0",
        "10, 1, 0"})
    void unitsThatAreLitOverTheThreshold(double heightM, int flyUp, int flyDown) {
        Siting siting = Families.site("t-form-abbreviated", runway().build(), rules("icao:5th"));
        Observation seen = Signals.observe(siting, new FramePoint(0, 0, heightM));
        assertEquals(flyUp, lit(seen, 2));
        assertEquals(flyDown, lit(seen, 3));
        assertEquals(4, lit(seen, 1));
        assertEquals(flyUp > 0 ? Meaning.BELOW : flyDown > 0 ? Meaning.ABOVE : Meaning.ON_SLOPE, seen.meaning());
    }

    private static long lit(Observation seen, int bar) {
        return seen.seen().stream().filter(seenUnit -> seenUnit.unit().bar() == bar && seenUnit.light().colour() != Colour.NONE).count();
    }

    /** Leg line 30 m from the edge, bar units at 6 m and 12 m about it (from memory, Fig 5-17). */
    @Test
    void theTFormStandsOnItsLegLine() {
        Siting siting = Families.site("t-form", runway().build(), rules("icao:5th"));
        assertEquals(20, siting.units().size());
        assertEquals(52.5, unit(siting, "U1-right").place().rightM(), 1e-9);
        assertEquals(-52.5, unit(siting, "D3-left").place().rightM(), 1e-9);
        double[] across = {40.5, 46.5, 58.5, 64.5};
        for (int i = 0; i < 4; i++) {
            assertEquals(across[i], unit(siting, "W" + (i + 1) + "-right").place().rightM(), 1e-9);
            assertEquals(siting.distanceM(), unit(siting, "W" + (i + 1) + "-left").place().alongM(), 1e-9);
        }
        assertEquals(10, Families.site("t-form-abbreviated", runway().build(), rules("icao:5th")).units().size());
    }

    /** Red under 1 deg 54 (5.3.5.11); no fly-up light at or above, no fly-down light at or below the slope (5.3.5.8). */
    @ParameterizedTest
    @ValueSource(doubles = {400, 3000, 12000})
    void theTFormExcludesWhatTheTextExcludes(double distanceM) {
        Siting siting = Families.site("t-form", runway().build(), rules("icao:5th"));
        for (UnitPlan unit : siting.units()) {
            double height = distanceM * Math.tan(Math.toRadians(unit.settingDeg()));
            FramePoint onCutOff = new FramePoint(unit.place().alongM() - distanceM, 0, height);
            Light light = unit.lightAt(unit.settingDeg());
            if (unit.bar() == 2 || unit.bar() == 3) {
                assertEquals(Light.DARK, light, unit.id());
                assertEquals(unit.settingDeg(), unit.elevationDeg(onCutOff), 1e-9);
            }
            assertEquals(unit.bar() == 3 ? Light.DARK : Light.RED, unit.lightAt(1.8));
            assertEquals(unit.bar() == 3 ? Light.DARK : Light.WHITE, unit.lightAt(2));
            assertEquals(Light.DARK, unit.lightAt(6.1));
        }
        assertEquals(Meaning.WELL_BELOW, Signals.observe(siting, eye(siting, distanceM, 1)).meaning());
    }

    /** Widened to 45 minutes at helipads (Annex 14 Vol II 5.3.5.2 a); the outer units 20 minutes farther out (from memory). */
    @Test
    void rowsAtHelipadsAreWidened() {
        Siting four = Families.site("four-unit-row", Trials.helipad().build(), rules("icao:5th"));
        assertEquals(6 - 22.5 / 60, unit(four, "B").settingDeg(), 1e-9);
        assertEquals(6 + 22.5 / 60, unit(four, "C").settingDeg(), 1e-9);
        assertEquals(6 - 42.5 / 60, unit(four, "A").settingDeg(), 1e-9);
        assertEquals(6 + 42.5 / 60, unit(four, "D").settingDeg(), 1e-9);
        Siting two = Families.site("two-unit-row", Trials.helipad().build(), rules("icao:5th"));
        assertEquals(45 / 60.0, unit(two, "B").settingDeg() - unit(two, "A").settingDeg(), 1e-9);
    }

    /** Four sectors of 45 and 15 minutes between (5.3.5.6 to 5.3.5.11); the order of colours is from memory (Fig 5-13). */
    @ParameterizedTest
    @CsvSource({"6.4, FLASHING_GREEN, ABOVE", "6.37, GREEN, ON_SLOPE", "5.63, GREEN, ON_SLOPE", "5.62, RED, BELOW", "5.38, RED, BELOW",
        "5.37, FLASHING_RED, WELL_BELOW", "1, FLASHING_RED, WELL_BELOW"})
    void sectorsOfTheSingleUnitAtHelipads(double elevationDeg, String light, Meaning meaning) throws ReflectiveOperationException {
        Siting siting = Families.site("heliport-sector", Trials.helipad().build(), rules("icao:5th"));
        Observation seen = Signals.observe(siting, eye(siting, 700, elevationDeg));
        assertEquals(Light.class.getField(light).get(null), seen.seen().get(0).light());
        assertEquals(meaning, seen.meaning());
    }
}
