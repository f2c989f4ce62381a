package slopewright.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.AidLayouts;
import slopewright.evaluation.EvaluationCache;
import slopewright.evaluation.remedy.Remedies;
import slopewright.evaluation.remedy.Remedy;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** Remedies against closed formulas: each leaves nothing above the surface, and a little less of it does not. */
class RemediesTest {

    private static final double SLOPE_DEG = 1.93;
    private static final double TAN = Math.tan(Math.toRadians(SLOPE_DEG));

    private static Map<Remedy.Kind, Remedy> remedies(Sample sample) {
        RuleSet rules = RuleSets.find("icao").orElseThrow();
        return remedies(sample, rules).stream().collect(Collectors.toMap(Remedy::kind, remedy -> remedy));
    }

    private static List<Remedy> remedies(Sample sample, RuleSet rules) {
        return Remedies.of(AidEvaluation.of(sample.aid(), rules, new EvaluationCache()));
    }

    private static Sample withMast(double beforeM, double rightM, double aboveM) {
        Sample sample = Bases.row();
        sample.obstacle("mast", -beforeM, rightM, 100 + (beforeM - 60) * TAN + aboveM);
        return sample;
    }

    private static double amount(Map<Remedy.Kind, Remedy> remedies, Remedy.Kind kind) {
        return remedies.get(kind).amount().orElseThrow();
    }

    @Test
    void nothingPenetratesNothingToCure() {
        assertTrue(remedies(withMast(2060, 0, -0.01)).isEmpty());
    }

    /** The surface rises with the settings about its fixed start: its slope must reach the top of the mast. */
    @Test
    void theSlopeRisesByWhatTheSurfaceNeeds() {
        Map<Remedy.Kind, Remedy> remedies = remedies(withMast(2060, 0, 5));
        double needed = Math.toDegrees(Math.atan((2000 * TAN + 5) / 2000)) - SLOPE_DEG;
        assertEquals(3 + needed, amount(remedies, Remedy.Kind.RAISE_SLOPE), 1e-5);
    }

    @Test
    void theThresholdMovesByWhatTheSurfaceNeeds() {
        assertEquals(5 / TAN, amount(remedies(withMast(2060, 0, 5)), Remedy.Kind.DISPLACE_THRESHOLD), 1e-3);
    }

    /** First reading: crossing height up by the penetration, on 2 degrees 48 minutes. Second: until the moved surface is clear. */
    @Test
    void bothReadingsOfTheMoveUpwind() {
        Map<Remedy.Kind, Remedy> remedies = remedies(withMast(2060, 0, 5));
        assertEquals(5 / Math.tan(Math.toRadians(2.8)), amount(remedies, Remedy.Kind.MOVE_UPWIND_BY_CROSSING_HEIGHT), 1e-3);
        assertEquals(5 / TAN, amount(remedies, Remedy.Kind.MOVE_UPWIND_UNTIL_CLEAR), 1e-3);
    }

    /** Near the edge of the surface a small turn leaves the mast outside; on the axis no turn within 5 degrees does. */
    @Test
    void theAxisTurnsAwayFromTheMast() {
        assertTrue(remedies(withMast(4060, 0, 60)).get(Remedy.Kind.TURN_AXIS).amount().isEmpty());
        Sample sample = withMast(4060, 400, 30);
        double turn = amount(remedies(sample), Remedy.Kind.TURN_AXIS);
        assertTrue(turn > 0 && turn < 5, "the mast stands on the right, the axis turns to the left of the landing direction: " + turn);
        ProtectionSurface surface = AidLayouts.evaluate(sample.aid(), RuleSets.find("icao").orElseThrow()).surface().orElseThrow().geometry();
        FramePoint mast = new FramePoint(-4060, 400, 4000 * TAN + 30);
        assertTrue(surface.compare(mast, 0, 0).orElseThrow().excessM() > 0);
        assertTrue(surface.withAxisTurnDeg(turn - 0.01).compare(mast, 0, 0).isPresent());
        assertTrue(surface.withAxisTurnDeg(turn + 1e-9).compare(mast, 0, 0).filter(found -> found.excessM() > 0).isEmpty());
    }

    @Test
    void theBeamNarrowsToTheMastsAzimuth() {
        Sample sample = withMast(2060, 200, 5);
        double distance = sample.unit(0).getAlongM() + 2060;
        assertEquals(Math.toDegrees(Math.atan2(200, distance)), amount(remedies(sample), Remedy.Kind.NARROW_BEAM), 1e-4);
        assertTrue(remedies(sample).get(Remedy.Kind.NARROW_BEAM).text().contains("right"));
        sample.obstacle("second mast", -2060, -200, 180);
        assertTrue(remedies(sample).get(Remedy.Kind.NARROW_BEAM).amount().isEmpty(), "one on each side");
        assertTrue(remedies(withMast(2060, 0, 5)).get(Remedy.Kind.NARROW_BEAM).amount().isEmpty(), "on the axis");
    }

    /** The surface of a T form goes by its red limit (5.3.5.21), which rises with all other settings. */
    @Test
    void theRedLimitOfATFormRisesWithAllSettings() {
        Sample sample = Bases.tForm();
        double start = 2000 * Math.tan(Math.toRadians(1.9));
        sample.obstacle("mast", -2060, 0, 100 + start + 5);
        double needed = Math.toDegrees(Math.atan((start + 5) / 2000)) - 1.9;
        assertEquals(3 + needed, amount(remedies(sample), Remedy.Kind.RAISE_SLOPE), 1e-5);
        assertTrue(remedies(sample).get(Remedy.Kind.RAISE_SLOPE).helps());
    }

    /** A turn that the rule set does not give is no remedy. */
    @Test
    void noTurnWhereTheRuleSetGivesNone() {
        Sample sample = Bases.usRow();
        sample.obstacle("mast", -2000, 0, 220);
        List<Remedy> remedies = remedies(sample, RuleSets.find("faa").orElseThrow());
        assertFalse(remedies.stream().filter(one -> one.kind() == Remedy.Kind.TURN_AXIS).findFirst().orElseThrow().helps());
        assertTrue(remedies.stream().filter(one -> one.kind() == Remedy.Kind.RAISE_SLOPE).findFirst().orElseThrow().helps());
    }

    @Test
    void aLayoutWithoutSurfaceHasNothingToCure() {
        Sample sample = Bases.row();
        sample.runway().setCodeNumber(1);
        assertTrue(remedies(sample).isEmpty());
    }
}
