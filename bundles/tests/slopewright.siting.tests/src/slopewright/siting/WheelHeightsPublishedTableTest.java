package slopewright.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.geometry.Angles;
import slopewright.geometry.Lengths;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** Wheel heights over the threshold against published tables. */
class WheelHeightsPublishedTableTest {

    private static final double AIM_FT = 1000;
    /** Half a foot of a height, and what half a foot of a distance or of the other height makes of it. */
    private static final double PRINTED_FT = 0.5 + 2 * 0.5 * Math.tan(Math.toRadians(3));

    private final RuleSet rules = RuleSets.find("faa").orElseThrow();

    private static double clearanceFt(Siting siting) {
        return Lengths.metresToFeet(siting.wheelClearanceM().orElseThrow());
    }

    /**
     * Landing geometry without flare on a 3 degree path that meets the runway 1000 ft past the threshold: heights of eye and gear while the
     * gear is over the threshold and touchdown of the gear, as printed in the Boeing flight crew training manuals of 2006 (seen). What is
     * typed is how far apart the two paths touch down; the gear height of the manual, printed to a foot, is what must come out of it.
     */
    @ParameterizedTest
    @CsvSource({"777-200, 47, 20, 373", "777-200LR, 48, 22, 416", "777-300, 46, 19, 363", "777-300ER, 47, 19, 363", "737-600, 50, 36, 683",
        "737-700, 50, 35, 675", "737-800, 49, 35, 671", "737-800SFP, 50, 34, 649", "737-900, 49, 34, 644"})
    void theGearIsAsHighOverTheThresholdAsTheManualsSay(String model, double eyeFt, double gearFt, double touchdownFt) {
        Siting siting = Families.site("alignment-panels", SitingRequest.builder().set(Input.SLOPE, 3.0).set(Input.RUNWAY_WIDTH, 45.0)
                .set(Input.DISTANCE, Lengths.feetToMetres(AIM_FT))
                .set(Input.EYE_TO_WHEEL, Lengths.feetToMetres((AIM_FT - touchdownFt) * Angles.tanDeg(3)))
                .build(), rules);
        double belowThePathFt = Lengths.metresToFeet(siting.nominalEyeHeightM().orElseThrow() - siting.mehtM());
        assertEquals(gearFt, clearanceFt(siting) + belowThePathFt, PRINTED_FT, model);
        double flownFt = gearOverTheThresholdFt(siting, eyeFt, gearFt);
        double atMostFt = (AIM_FT - eyeFt * Angles.cotDeg(3)) * (Angles.tanDeg(3) - Angles.tanDeg(siting.lowestOnSlopeDeg()));
        assertTrue(clearanceFt(siting) <= flownFt + PRINTED_FT && clearanceFt(siting) >= flownFt - atMostFt - PRINTED_FT,
                model + ": " + clearanceFt(siting) + " ft, flown " + flownFt + " ft");
    }

    /**
     * The height of the gear over the threshold of an aeroplane that comes down as a rigid body with its eye on the lowest signal. How far
     * the eye is ahead of the gear and above it follows from the printed heights; its attitude is that of the 3 degree path.
     */
    private static double gearOverTheThresholdFt(Siting siting, double eyeFt, double gearFt) {
        double aheadFt = AIM_FT - eyeFt / Math.tan(Math.toRadians(3));
        return (AIM_FT - aheadFt) * Math.tan(Math.toRadians(siting.lowestOnSlopeDeg())) - (eyeFt - gearFt);
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
