package slopewright.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.geometry.Angles;
import slopewright.geometry.Lengths;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** Wheel heights over the threshold against published tables. */
class WheelHeightsPublishedTableTest {

    private static final double AIM_FT = 1000;
    private static final double HALF_DIGIT_FT = 0.5;

    private final RuleSet rules = RuleSets.find("faa").orElseThrow();

    private static double clearanceFt(Siting siting) {
        return Lengths.metresToFeet(siting.wheelClearanceM().orElseThrow());
    }

    /**
     * Landing geometry without flare on a 3 degree path that meets the runway 1000 ft past the threshold: gear height over the threshold
     * and gear touchdown as printed in the Boeing flight crew training manuals of 2006 (seen). The touchdown must lie between those of
     * the gear height half a foot lower and higher.
     */
    @ParameterizedTest
    @CsvSource({"777-200, 20, 373", "777-200LR, 22, 416", "777-300, 19, 363", "777-300ER, 19, 363", "737-600, 36, 683", "737-700, 35, 675",
        "737-800, 35, 671", "737-800SFP, 34, 649", "737-900, 34, 644"})
    void theGearTouchesDownWhereTheManualsSay(String model, double gearFt, double touchdownFt) {
        double pathOverThresholdFt = AIM_FT * Angles.tanDeg(3);
        Siting siting = Families.site("alignment-panels", SitingRequest.builder().set(Input.SLOPE, 3.0).set(Input.RUNWAY_WIDTH, 45.0)
                .set(Input.DISTANCE, Lengths.feetToMetres(AIM_FT))
                .set(Input.EYE_TO_WHEEL, Lengths.feetToMetres(pathOverThresholdFt - gearFt))
                .build(), rules);
        double eyeToWheelFt = pathOverThresholdFt - gearFt;
        double gearOnPathFt = Lengths.metresToFeet(siting.nominalEyeHeightM().orElseThrow()) - eyeToWheelFt;
        assertEquals(touchdownFt, gearOnPathFt * Angles.cotDeg(3), HALF_DIGIT_FT * Angles.cotDeg(3), model);
        assertEquals(Lengths.metresToFeet(siting.mehtM()) - eyeToWheelFt, clearanceFt(siting), 1e-9, "the least signal, not the path");
    }

    /**
     * Eye-path-to-wheel-path heights credited to Doc 9157 Part 4, App. 6 (secondary), and the wheel heights that visual crossing heights
     * of 40, 45, 50 and 75 ft leave; negative where the wheels would be below the threshold.
     */
    @ParameterizedTest
    @CsvSource({"12, 28, 33, 38, 63", "19, 21, 26, 31, 56", "21, 19, 24, 29, 54", "23, 17, 22, 27, 52", "24, 16, 21, 26, 51",
        "26, 14, 19, 24, 49", "30, 10, 15, 20, 45", "33, 7, 12, 17, 42", "38, 2, 7, 12, 37", "45, -5, 0, 5, 30"})
    void crossingHeightsLeaveTheWheelsAsHighAsTheListSays(double eyeToWheelFt, double at40, double at45, double at50, double at75) {
        double[] expected = {at40, at45, at50, at75};
        for (int group = 1; group <= expected.length; group++) {
            Siting siting = Families.site("four-unit-row", SitingRequest.builder().set(Input.SLOPE, 3.0).set(Input.RUNWAY_WIDTH, 45.0)
                    .set(Input.CODE, 4.0).set(Input.HEIGHT_GROUP, (double) group)
                    .set(Input.EYE_TO_WHEEL, Lengths.feetToMetres(eyeToWheelFt)).build(), rules);
            assertEquals(expected[group - 1], clearanceFt(siting), 1e-6, "height group " + group);
        }
    }
}
