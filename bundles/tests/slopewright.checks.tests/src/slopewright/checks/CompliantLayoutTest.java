package slopewright.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.model.ApproachType;


/** A solved layout of every family under every rule set that covers it breaks no rule; what is not covered is never a pass. */
class CompliantLayoutTest {
    /** A note that every T form gets (Annex 14 Vol I, 9th ed., 5.3.5.4). */
    private static final String NO_LONGER_STANDARD = "FAM-04";

    static List<String> runways() {
        return List.of("icao four-unit-row", "icao:9th four-unit-row", "icao:9th t-form", "icao t-form", "icao t-form-abbreviated",
                "easa four-unit-row",
                "casa four-unit-row", "casa t-form", "casa t-form-abbreviated", "faa four-unit-row", "faa two-unit-row", "faa two-bar",
                "faa three-bar");
    }

    @ParameterizedTest
    @MethodSource("runways")
    void aSolvedLayoutAtARunwayBreaksNoRule(String which) {
        String[] parts = which.split(" ");
        CheckResult result = Sample.runway(parts[0], parts[1], sample -> {
            sample.levelGround();
            sample.host().setApproachType(ApproachType.NON_PRECISION);
            sample.host().getRegularGroups().get(0).setStaticCockpitToWheelM(4.5);
            if (parts[1].endsWith("bar")) {
                sample.aid().setTargetEyeHeightM(10.0);
            } else if (parts[1].startsWith("t-form")) {
                // The bars alone are seen lower than the nominal height: the wheels of lower aeroplanes clear the threshold by 9 m.
                sample.aid().setTargetEyeHeightM(16.0);
                sample.host().getRegularGroups().get(0).setEyeToWheelM(3.5);
                sample.host().getRegularGroups().get(0).setStaticCockpitToWheelM(2.5);
            } else if ("faa".equals(parts[0])) {
                sample.aid().setHeightGroup(3);
                sample.equipment().setHeightAboveGroundM(0.2);
                sample.levelCentreLine();
            }
        }).check();
        assertClean(result);
    }

    @ParameterizedTest
    @ValueSource(strings = {"icao heliport-sector", "icao four-unit-row", "icao two-unit-row"})
    void aSolvedLayoutAtAHelipadBreaksNoRule(String which) {
        String[] parts = which.split(" ");
        assertClean(Sample.helipad(parts[0], parts[1], 4, sample -> sample.equipment().setBeamWidthDeg(32.0)).check());
    }

    private static void assertClean(CheckResult result) {
        assertTrue(result.anythingEvaluated());
        assertEquals(List.of(), result.outcomes().stream()
                .filter(outcome -> !outcome.rule().equals(NO_LONGER_STANDARD))
                .filter(outcome -> outcome.result() == Result.FAIL || outcome.result() == Result.NOT_EVALUATED)
                .map(outcome -> outcome.rule() + " " + outcome.elementPath() + ": " + outcome.explanation()).toList());
    }

    @Test
    void aFamilyThatTheRuleSetDoesNotCoverIsNoPass() {
        Sample sample = Sample.runway("icao:5th", "t-form");
        CheckResult result = Checks.run(sample.project(), Optional.of("faa"));
        assertTrue(result.outcomes().stream().anyMatch(outcome -> outcome.rule().equals("DATA-07") && outcome.result() == Result.FAIL));
        assertTrue(result.outcomes().stream().noneMatch(outcome -> outcome.rule().startsWith("OBS-0")
                && outcome.elementId().equals(sample.aid().getId()) && outcome.result() == Result.PASS));
    }

    @Test
    void noRuleEvaluatedIsNoPass() {
        Sample sample = Sample.runway("icao:5th", "four-unit-row");
        CheckResult result = Checks.run(sample.project(), Optional.of("icao:5th"), rule -> false);
        assertFalse(result.anythingEvaluated());
        assertTrue(result.outcomes().isEmpty());
    }

    /** A portable unit is checked under the rule set that it names, unless one is asked for by name. */
    @Test
    void anAidMayNameItsOwnRuleSet() {
        Sample sample = Sample.runway("faa", "two-bar", made -> made.aid().setHeightGroup(3));
        sample.project().setRuleSetKey("icao:5th");
        sample.aid().setRuleSetKey("faa");
        assertEquals(Result.PASS, result(Checks.run(sample.project(), Optional.empty()), "DATA-07"));
        assertEquals(Result.FAIL, result(Checks.run(sample.project(), Optional.of("icao:5th")), "DATA-07"));
    }

    /** An aid that names an unknown rule set is checked under that of the project, and the name is a finding. */
    @Test
    void anUnknownOwnRuleSetIsAFinding() {
        Sample sample = Bases.row();
        sample.aid().setRuleSetKey("icao:12th");
        CheckResult result = Checks.run(sample.project(), Optional.empty());
        assertEquals(Result.FAIL, result(result, "DATA-08"));
        assertEquals(Result.PASS, result(result, "ROW-03"));
        assertThrows(IllegalArgumentException.class, () -> Checks.run(sample.project(), Optional.of("icao:12th")));
    }

    private static Result result(CheckResult result, String rule) {
        return result.outcomes().stream().filter(outcome -> outcome.rule().equals(rule)).findFirst().orElseThrow().result();
    }
}
