package slopewright.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static slopewright.siting.Trials.note;
import static slopewright.siting.Trials.number;
import static slopewright.siting.Trials.rules;
import static slopewright.siting.Trials.runway;

import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

import slopewright.geometry.Profile;

/**
 * Levels of lens and threshold: the eye height that a place gives is D tan M + lens - threshold, plain geometry, so each solution is
 * put back into that formula. The single step moves the row by the difference x cot M where it is more than 0.3 m (from memory).
 */
class LevelCorrectionTest {

    private static final double TAN_M = Math.tan(Math.toRadians(2.8));

    private static Siting row(SitingRequest request) {
        return Families.site("four-unit-row", request, rules("icao:5th"));
    }

    /** D = (eye height - lens) cot 2 deg 48 min, worked with cot = 20.4465. */
    @ParameterizedTest
    @CsvSource({"0, 306.70", "1, 286.25", "-1, 327.14", "0.2, 302.61", "-2.5, 357.81"})
    void aLensOffTheThresholdLevelMovesTheRow(double lensM, double distanceM) {
        Siting siting = row(runway().set(Input.LENS_HEIGHT, lensM).build());
        assertEquals(distanceM, siting.distanceM(), 0.006);
        assertEquals(15, siting.distanceM() * TAN_M + lensM, 1e-9);
        assertEquals(15, siting.mehtM(), 1e-9);
        assertEquals(lensM, siting.units().get(2).place().heightM(), 1e-12);
    }

    /** Over 0.3 m the published step moves the row, up to that it leaves it: 15 cot M = 306.70 m. */
    @ParameterizedTest
    @CsvSource({"0.3, 306.70", "-0.3, 306.70", "0.31, 300.36", "-0.31, 313.04", "1, 286.25"})
    void theSingleStepStandsBeside(double lensM, double singleStepM) {
        assertEquals(singleStepM, row(runway().set(Input.LENS_HEIGHT, lensM).build()).level().orElseThrow().singleStepM(), 0.006);
    }

    /** D = (eye height - h) / (tan M + s), worked by hand for a rise of 1 % and lenses 0.8 m over the ground: 14.2 / 0.0589082. */
    @Test
    void aUniformSlopeIsSolvedAtOnce() {
        Siting siting = row(runway().set(Input.GROUND_SLOPE, 1.0).set(Input.LENS_ABOVE_GROUND, 0.8).build());
        assertEquals(241.053, siting.distanceM(), 0.001);
        assertEquals(0.8 + 2.41053, siting.reference().heightM(), 1e-4);
        assertEquals(3.21053, siting.level().orElseThrow().levelDifferenceM(), 1e-4);
        assertEquals(3.21053, number(note(siting, "siting.note.lenses-above"), 0), 1e-4);
    }

    static java.util.stream.IntStream seeds() {
        return java.util.stream.IntStream.range(0, 60);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everySolutionGivesItsEyeHeightBack(int seed) {
        Random random = new Random(seed);
        double eye = 8 + random.nextDouble() * 14;
        double slope = random.nextDouble() * 4 - 2;
        double above = random.nextDouble();
        Siting siting = row(runway().set(Input.EYE_HEIGHT, eye).set(Input.GROUND_SLOPE, slope).set(Input.LENS_ABOVE_GROUND, above).build());
        assertEquals(eye, siting.distanceM() * TAN_M + slope / 100 * siting.distanceM() + above, 1e-9);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everySolutionOnMeasuredGroundDoesToo(int seed) {
        Random random = new Random(seed);
        double[] places = new double[40];
        double[] heights = new double[40];
        for (int i = 0; i < 40; i++) {
            places[i] = i * 20 + random.nextDouble() * 15;
            heights[i] = i == 0 ? 0 : heights[i - 1] + (random.nextDouble() - 0.5) * 0.6;
        }
        Profile ground = Profile.of(places, heights);
        Siting siting = row(runway().ground(ground).set(Input.LENS_ABOVE_GROUND, 0.5).build());
        int after = 1;
        while (places[after] < siting.distanceM()) {
            after++;
        }
        double share = (siting.distanceM() - places[after - 1]) / (places[after] - places[after - 1]);
        double lens = heights[after - 1] + share * (heights[after] - heights[after - 1]) + 0.5;
        assertEquals(15, siting.distanceM() * TAN_M + lens, 1e-9);
        assertEquals(lens, siting.reference().heightM(), 1e-9);
    }

    /** The first of several places is taken: ground that falls as steeply as the beam behind a step up. */
    @Test
    void theNearestPlaceIsTaken() {
        Profile ground = Profile.of(new double[] {0, 250, 260, 400}, new double[] {0, 0, 5, -4});
        Siting siting = row(runway().ground(ground).build());
        assertTrue(siting.distanceM() > 250 && siting.distanceM() < 260);
        assertEquals(15, siting.mehtM(), 1e-9);
    }

    @Test
    void aUniformProfileAgreesWithTheSlope() {
        Profile ground = Profile.of(new double[] {-100, 700}, new double[] {-1, 7});
        Siting sloped = row(runway().set(Input.GROUND_SLOPE, 1.0).build());
        assertEquals(sloped.distanceM(), row(runway().ground(ground).build()).distanceM(), 1e-9);
    }

    @Test
    void groundThatEndsTooSoonIsNotStretched() {
        Profile ground = Profile.of(new double[] {0, 200}, new double[] {0, 0});
        SitingException refused = assertThrows(SitingException.class, () -> row(runway().ground(ground).build()));
        assertTrue(refused.getMessage().contains("200.00 m") && refused.getMessage().contains("survey further"), refused.getMessage());
    }

    @Test
    void groundThatFallsWithTheBeamGivesNoPlace() {
        assertThrows(SitingException.class, () -> row(runway().set(Input.GROUND_SLOPE, -5.0).build()));
    }

    /** Each unit of the T form is moved for its own level: its plane passes the height it would pass on level ground. */
    @ParameterizedTest
    @CsvSource({"0.8, 0", "-1.2, 0.5", "0, -0.6"})
    void theTFormKeepsItsHeightsOnASlope(double slopePercent, double aboveM) {
        Siting level = Families.site("t-form-abbreviated", runway().build(), rules("icao:5th"));
        Siting sloped = Families.site("t-form-abbreviated",
                runway().set(Input.GROUND_SLOPE, slopePercent).set(Input.LENS_ABOVE_GROUND, aboveM).build(), rules("icao:5th"));
        for (UnitPlan unit : sloped.units()) {
            if (unit.bar() > 1) {
                double tan = Math.tan(Math.toRadians(unit.settingDeg()));
                double passed = unit.place().alongM() * tan + unit.place().heightM();
                assertEquals(Trials.unit(level, unit.id()).place().alongM() * tan, passed, 1e-9, unit.id());
                assertEquals(slopePercent / 100 * unit.place().alongM() + aboveM, unit.place().heightM(), 1e-9);
            }
        }
        assertEquals(15, sloped.nominalEyeHeightM().orElseThrow(), 1e-9);
        assertEquals(15 - 45 * Math.tan(Math.toRadians(3)), sloped.mehtM(), 1e-9, "the first fly-up unit, 45 m nearer, on its own level");
    }

    /** What the level cross-check prints is a single step, on bars as well: 12 cot 2.75 deg = 249.83 m less 0.01 x 249.83 x cot. */
    @Test
    void barsShowTheSingleStepToo() {
        Siting siting = Families.site("two-bar", runway().set(Input.EYE_HEIGHT, 12.0).set(Input.GROUND_SLOPE, 1.0).build(), rules("faa"));
        assertEquals(12 / (Math.tan(Math.toRadians(2.75)) + 0.01), siting.distanceM(), 1e-9);
        assertEquals(197.82, siting.level().orElseThrow().singleStepM(), 0.006);
    }
}
