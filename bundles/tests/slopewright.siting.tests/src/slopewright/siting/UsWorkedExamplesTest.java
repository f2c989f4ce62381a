package slopewright.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static slopewright.siting.Trials.FOOT;
import static slopewright.siting.Trials.colours;
import static slopewright.siting.Trials.eye;
import static slopewright.siting.Trials.hasNote;
import static slopewright.siting.Trials.note;
import static slopewright.siting.Trials.number;
import static slopewright.siting.Trials.rules;
import static slopewright.siting.Trials.unit;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

import slopewright.geometry.FramePoint;
import slopewright.messages.Message;

/** US examples to the printed digit, half the last digit of a foot. Crossing heights of the groups are from memory. */
class UsWorkedExamplesTest {

    /** Half the last printed digit of a hundredth of a foot, and a little for numbers that were rounded on the way. */
    private static final double FT = 0.0051;

    private static SitingRequest.Builder runway() {
        return SitingRequest.builder().set(Input.SLOPE, 3.0).set(Input.RUNWAY_WIDTH, 150 * FOOT);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/cases/us-distances.csv")
    void distancesOfTheHeightGroups(double group, double crossingHeightFt, double fourUnitsFt, double twoUnitsFt, double onPathFt) {
        SitingRequest request = runway().set(Input.HEIGHT_GROUP, group).build();
        Siting four = Families.site("four-unit-row", request, rules("faa"));
        assertEquals(crossingHeightFt, four.mehtM() / FOOT, 1e-9);
        assertEquals(fourUnitsFt, four.distanceM() / FOOT, FT);
        assertEquals(twoUnitsFt, Families.site("two-unit-row", request, rules("faa")).distanceM() / FOOT, FT);
        assertEquals(fourUnitsFt, number(note(four, "siting.note.path-basis"), 0) / FOOT, FT);
        assertEquals(onPathFt, number(note(four, "siting.note.path-basis"), 1) / FOOT, FT);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/cases/us-settings.csv")
    void settingsFromTheAimingTable(String family, double slopeDeg, boolean groupFourWithGlidePath, String settings) {
        SitingRequest.Builder request = runway().set(Input.SLOPE, slopeDeg).set(Input.HEIGHT_GROUP, groupFourWithGlidePath ? 4.0 : 3.0);
        if (groupFourWithGlidePath) {
            request.set(Input.GLIDE_PATH_ORIGIN, 1000 * FOOT);
        }
        Siting siting = Families.site(family, request.build(), rules("faa"));
        String[] expected = settings.split("\\|");
        for (int i = 0; i < expected.length; i++) {
            UnitPlan unit = siting.units().get(i);
            assertEquals(String.valueOf(i + 1), unit.id(), "unit 1 is nearest to the runway");
            assertEquals(Double.parseDouble(expected[i]), unit.settingDeg(), 0.00005);
        }
    }

    /** 50 ft from a runway 150 ft wide, 30 ft apart (UFC 3-535-01 12-3.2): 125, 155, 185, 215 ft from the centre line. */
    @Test
    void placesBesideTheRunway() {
        Siting siting = Families.site("four-unit-row", runway().set(Input.HEIGHT_GROUP, 3.0).build(), rules("faa"));
        for (int i = 0; i < 4; i++) {
            assertEquals(-(125 + 30 * i), siting.units().get(i).place().rightM() / FOOT, 1e-9);
        }
    }

    /** Settings as 2.5, 2.8333, 3.1667 and 3.5 degrees, 954.06 ft from the threshold: heights of the boundaries, computed apart. */
    @ParameterizedTest
    @CsvSource({"0, 41.66, 47.22, 52.78, 58.35", "6076.1155, 306.94, 347.93, 388.95, 429.98",
        "20658.7927, 943.64, 1069.65, 1195.73, 1321.90"})
    void boundariesOfAGivenRow(double xFt, double fourthFt, double thirdFt, double secondFt, double firstFt) {
        Siting siting = Families.site("four-unit-row", runway().set(Input.DISTANCE, 954.06 * FOOT).build(), rules("faa"));
        double[] boundaries = {firstFt, secondFt, thirdFt, fourthFt};
        for (int i = 0; i < 4; i++) {
            assertEquals(Light.RED, light(siting, i, xFt, boundaries[i] - 0.0061));
            assertEquals(Light.WHITE, light(siting, i, xFt, boundaries[i] + 0.0061));
        }
        assertEquals(47.22, siting.mehtM() / FOOT, FT, "the lowest on-course signal, 2.78 ft under the target of 50 ft");
    }

    private static Light light(Siting siting, int unit, double xFt, double heightFt) {
        return Signals.observe(siting, new FramePoint(-xFt * FOOT, 0, heightFt * FOOT)).seen().get(unit).light();
    }

    @ParameterizedTest
    @CsvSource({"2.4, RRRR", "2.6, RRRW", "2.9, RRWW", "3.0, RRWW", "3.2, RWWW", "3.4, RWWW", "3.6, WWWW"})
    void signalsFromTheRunwayOutward(double elevationDeg, String colours) {
        Siting siting = Families.site("four-unit-row", runway().set(Input.HEIGHT_GROUP, 3.0).build(), rules("faa"));
        assertEquals(colours, colours(Signals.observe(siting, eye(siting, 4000, elevationDeg))));
    }

    /** 45 ft at 3 degrees on the path: d = 45 / (tan 3 + S); rise e = S d. The panels are sited on the path itself. */
    @ParameterizedTest
    @CsvSource({"0, 858.65, 0", "1, 721.06, 7.21", "-1, 1061.13, -10.61"})
    void slopeOfTheRunway(double slopePercent, double distanceFt, double riseFt) {
        Siting siting = Families.site("alignment-panels",
                runway().set(Input.EYE_HEIGHT, 45 * FOOT).set(Input.GROUND_SLOPE, slopePercent).build(), rules("faa"));
        assertEquals(distanceFt, siting.distanceM() / FOOT, FT);
        assertEquals(riseFt, siting.reference().heightM() / FOOT, FT);
        Siting row = Families.site("four-unit-row", runway().set(Input.HEIGHT_GROUP, 2.0).set(Input.GROUND_SLOPE, slopePercent).build(),
                rules("faa"));
        assertEquals(distanceFt, number(note(row, "siting.note.path-basis"), 1) / FOOT, FT);
    }

    /** One step from 858.65 ft on a rise of 1 % gives 694.81 ft; the exact place, 721.06 ft, is where such steps end. */
    @Test
    void theSingleStepIsShownBesideTheExactPlace() {
        Siting siting = Families.site("alignment-panels", runway().set(Input.EYE_HEIGHT, 45 * FOOT).set(Input.GROUND_SLOPE, 1.0).build(),
                rules("faa"));
        assertEquals(694.81, siting.level().orElseThrow().singleStepM() / FOOT, FT);
        double tan = Math.tan(Math.toRadians(3));
        double place = 45 / tan;
        double[] printed = {694.81, 726.07, 720.11, 721.25, 721.03, 721.07};
        for (double step : printed) {
            place = (45 - 0.01 * place) / tan;
            assertEquals(step, place, FT);
        }
        for (int i = 0; i < 40; i++) {
            place = (45 - 0.01 * place) / tan;
        }
        assertEquals(place, siting.distanceM() / FOOT, 1e-9);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/cases/corridor.csv")
    void corridorOfTwoBars(double xFt, double lowFt, double highFarFt, double highNearFt) {
        assertCorridor(bars(1300), xFt, lowFt, highFarFt);
        assertCorridor(bars(623), xFt, lowFt, highNearFt);
    }

    private static Siting bars(double farFt) {
        return Families.site("two-bar", SitingRequest.builder().set(Input.SLOPE, 3.0)
                .bars(List.of(600 * FOOT, farFt * FOOT), List.of(2.5, 3.0)).build(), rules("faa"));
    }

    private static void assertCorridor(Siting siting, double xFt, double lowFt, double highFt) {
        assertEquals(26.20, siting.mehtM() / FOOT, FT);
        assertEquals(Meaning.BELOW, meaning(siting, xFt, lowFt - 0.0061));
        assertEquals(Meaning.ON_SLOPE, meaning(siting, xFt, lowFt + 0.0061));
        assertEquals(Meaning.ON_SLOPE, meaning(siting, xFt, highFt - 0.0061));
        assertEquals(Meaning.ABOVE, meaning(siting, xFt, highFt + 0.0061));
    }

    private static Meaning meaning(Siting siting, double xFt, double heightFt) {
        return Signals.observe(siting, new FramePoint(-xFt * FOOT, 0, heightFt * FOOT)).meaning();
    }

    /** 500 ft is the least spacing printed (secondary); bars 23 ft apart merge beyond 4138 ft, 0.68 NM (1 minute, common practice). */
    @Test
    void barsThatStandTooCloseAreAFault() {
        assertFalse(hasNote(bars(1300), "siting.note.bars-too-close"));
        Message fault = note(bars(623), "siting.note.bars-too-close");
        assertEquals(152.4, number(fault, 3), 1e-9);
        assertEquals(4138, number(fault, 4) / FOOT, 0.5);
    }

    static List<double[]> descents() {
        return List.of(new double[] {300, 400, 500, 600, 700, 800, 900, 1000, 1200});
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/cases/descent-angles.csv")
    void slopeFromSpeedAndDescent(double speedKt, double d300, double d400, double d500, double d600, double d700, double d800, double d900,
            double d1000, double d1200) {
        double[] expected = {d300, d400, d500, d600, d700, d800, d900, d1000, d1200};
        double[] descents = descents().get(0);
        for (int i = 0; i < expected.length; i++) {
            SitingRequest request = SitingRequest.builder().set(Input.GROUND_SPEED, speedKt).set(Input.DESCENT, descents[i])
                    .set(Input.HOVER_HEIGHT, 1.5).set(Input.EYE_ABOVE_SKIDS, 1.8).build();
            Siting siting = Families.site("heliport-pair", request, rules("faa"));
            assertEquals(expected[i], siting.slopeDeg(), 0.0051);
            assertTrue(hasNote(siting, "siting.note.descent"));
        }
    }

    /** Distance beyond the hover point for skids 3 or 8 ft up and the eye 6 ft above them, (H + E) / tan, feet to one decimal. */
    @ParameterizedTest
    @CsvSource({"6, 85.6, 133.2", "8, 64.0, 99.6", "10, 51.0, 79.4", "12, 42.3, 65.9"})
    void distanceBeyondTheHoverPoint(double slopeDeg, double lowFt, double highFt) {
        double[] expected = {lowFt, highFt};
        double[] hover = {3, 8};
        for (int i = 0; i < 2; i++) {
            SitingRequest request = SitingRequest.builder().set(Input.SLOPE, slopeDeg).set(Input.HOVER_HEIGHT, hover[i] * FOOT)
                    .set(Input.EYE_ABOVE_SKIDS, 6 * FOOT).build();
            assertEquals(expected[i], Families.site("heliport-pair", request, rules("faa")).distanceM() / FOOT, 0.051);
        }
    }

    /** Green 2 degrees wide in each unit, both green within 15 minutes of 6 degrees (equipment data sheets, secondary). */
    @ParameterizedTest
    @CsvSource({"7.76, WW, WELL_ABOVE", "7.74, WG, ABOVE", "6.26, WG, ABOVE", "6.24, GG, ON_SLOPE", "5.76, GG, ON_SLOPE", "5.74, GR, BELOW",
        "4.26, GR, BELOW", "4.24, RR, WELL_BELOW"})
    void sectorsOfThePairAtHelipads(double elevationDeg, String lowThenHigh, Meaning meaning) {
        Siting siting = Families.site("heliport-pair", Trials.helipad().build(), rules("faa"));
        Observation seen = Signals.observe(siting, eye(siting, 500, elevationDeg));
        assertEquals(lowThenHigh, colours(seen));
        assertEquals(meaning, seen.meaning());
        assertEquals(20, (unit(siting, "high").place().rightM() - unit(siting, "low").place().rightM()) / FOOT, 1e-9);
    }

    /** Panels 50 ft apart at 3 degrees: the front ones 2.620 ft higher; the forum rule of 1 in 20 would give 2.5 ft. */
    @Test
    void riseOfThePanels() {
        Siting siting = panels();
        assertEquals(2.620, (unit(siting, "P1").place().heightM() - unit(siting, "P2").place().heightM()) / FOOT, 0.0005);
        assertEquals(50, (unit(siting, "P2").place().alongM() - unit(siting, "P3").place().alongM()) / FOOT, 1e-9);
    }

    private static Siting panels() {
        return Families.site("alignment-panels", runway().set(Input.EYE_HEIGHT, 45 * FOOT).set(Input.PANEL_DISTANCE, 50 * FOOT).build(),
                rules("faa"));
    }

    /** Minutes of arc by which the middle panel stands off the line of the outer two, computed apart; range from the front panels. */
    @ParameterizedTest
    @CsvSource({"3960, 0.19, 0.38, 0.76", "2640, 0.28, 0.57, 1.14", "1320, 0.57, 1.14, 2.27"})
    void splitOfThePanels(double rangeFt, double quarterMin, double halfMin, double wholeMin) {
        double[] expected = {quarterMin, halfMin, wholeMin};
        double[] errors = {0.25, 0.5, 1};
        Siting siting = panels();
        for (int i = 0; i < errors.length; i++) {
            Observation seen = Signals.observe(siting, eye(siting, (rangeFt + 50) * FOOT, 3 + errors[i]));
            SeenUnit middle = seen.seen().stream().filter(seenUnit -> "P2".equals(seenUnit.unit().id())).findFirst().orElseThrow();
            double split = middle.offsetMin().orElseThrow();
            assertEquals(expected[i], split, 0.0051, "the farther element moves the same way as the aircraft");
            assertEquals(expected[i] >= 1 ? Meaning.ABOVE : Meaning.ON_SLOPE, seen.meaning());
        }
    }

    static List<String> barOffsets() {
        return List.of("near", "far");
    }

    /** Path midway between near and far; the other tradition 2.5 and 3.0 degrees; both from memory. */
    @ParameterizedTest
    @MethodSource("barOffsets")
    void settingsOfTwoBars(String bar) {
        SitingRequest.Builder request = runway().set(Input.EYE_HEIGHT, 15.0);
        String id = bar.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + "1";
        assertEquals("near".equals(bar) ? 2.75 : 3.25,
                unit(Families.site("two-bar", request.build(), rules("faa")), id).settingDeg(), 1e-9);
        assertEquals("near".equals(bar) ? 2.5 : 3.0,
                unit(Families.site("two-bar", request.option("tradition", "tradition").build(), rules("faa")), id).settingDeg(), 1e-9);
    }

    /** Near 2.75, middle 3.00, far 3.25 degrees, 700 ft apart (from memory); 6 units on one side, 16 as 3, 3 and 2 on both. */
    @Test
    void threeBars() {
        Siting six = Families.site("three-bar", runway().set(Input.EYE_HEIGHT, 12.0).build(), rules("faa"));
        assertEquals(List.of(2.75, 2.75, 3.0, 3.0, 3.25, 3.25), six.units().stream().map(UnitPlan::settingDeg).toList());
        assertEquals(700, (unit(six, "M1").place().alongM() - unit(six, "N1").place().alongM()) / FOOT, 1e-9);
        assertEquals(700, (unit(six, "F2").place().alongM() - unit(six, "M2").place().alongM()) / FOOT, 1e-9);
        Siting sixteen = Families.site("three-bar", runway().set(Input.EYE_HEIGHT, 12.0).set(Input.UNITS, 16.0).build(), rules("faa"));
        assertEquals(List.of(6L, 6L, 4L), List.of(1, 2, 3).stream()
                .map(bar -> sixteen.units().stream().filter(unit -> unit.bar() == bar).count()).toList());
        FramePoint highOnTheLowerPath = new FramePoint(-3000, 0, six.reference().heightM() + (3000 + six.distanceM() + 213.36)
                * Math.tan(Math.toRadians(3.1)));
        Observation seen = Signals.observe(six, highOnTheLowerPath);
        assertEquals(Meaning.ABOVE, seen.meanings().get("lower"));
        assertEquals(Meaning.ON_SLOPE, seen.meanings().get("upper"));
    }
}
