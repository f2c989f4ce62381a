package slopewright.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.evaluation.AidLayouts;
import slopewright.evaluation.Confirmations;
import slopewright.messages.Message;
import slopewright.model.SlopewrightFactory;
import slopewright.model.ValueConfirmation;
import slopewright.model.ValueOverride;
import slopewright.siting.Siting;
import slopewright.standards.RuleSets;

/** Numbers of outcomes against worked examples, and what provenance does to them. */
class OutcomeValuesTest {

    private static Outcome only(Sample sample, String rule) {
        List<Outcome> outcomes = sample.outcomes(rule);
        assertEquals(1, outcomes.size(), rule);
        return outcomes.get(0);
    }

    /** The base row with its lenses at threshold level, at a distance. */
    private static Sample levelRow(double distanceM) {
        Sample sample = Bases.row();
        sample.units(unit -> {
            unit.setLensElevationM(Sample.DATUM_M);
            unit.setAlongM(distanceM);
        });
        return sample;
    }

    /** Worked example of the ICAO base: eye-to-wheel 6.63 m, M = 2 degrees 48 minutes: 9 m at 319.58 m, 5 m at 237.79 m. */
    @ParameterizedTest
    @CsvSource({"319.58, 15.63, 9", "237.79, 11.63, 5"})
    void wheelClearanceOfTheWorkedExample(double distanceM, double eyeHeightM, double clearanceM) {
        Sample sample = levelRow(distanceM);
        Outcome desired = only(sample, "WHEEL-01");
        assertEquals(clearanceM, desired.value().getAsDouble(), 0.003);
        assertEquals(9, desired.limit().getAsDouble());
        assertEquals("m", desired.unit());
        assertTrue(desired.citations().stream().anyMatch(source -> source.text().english().contains("Table 5-2")));
        Outcome minimum = only(sample, "WHEEL-02");
        assertEquals(Result.PASS, minimum.result());
        assertEquals(clearanceM - 5, minimum.margin().getAsDouble(), 0.003);
        Outcome eye = only(sample, "EYE-01");
        assertEquals(eyeHeightM, eye.value().getAsDouble(), 0.003);
        assertTrue(eye.explanation().english().contains("MEHT"));
    }

    /** A cut clearance names the study that must accept it. */
    @Test
    void lessThanDesiredNamesTheStudy() {
        Outcome outcome = only(levelRow(300), "WHEEL-01");
        assertEquals(Result.FAIL, outcome.result());
        assertEquals(Severity.WARNING, outcome.severity());
        assertTrue(outcome.explanation().english().contains("aeronautical study"), outcome.explanation().english());
        assertTrue(outcome.explanation().english().contains("19.5"), "319.58 m are needed: " + outcome.explanation());
    }

    /** Splitting 1 minute of arc on 3 degrees: 23 ft apart up to 4138 ft, which are 1261 m. */
    @Test
    void barsTwentyThreeFeetApartLookAsOne() {
        Sample sample = Bases.twoBar();
        double near = sample.aid().getUnits().stream().filter(unit -> unit.getBar() == 1).findFirst().orElseThrow().getAlongM();
        sample.aid().getUnits().stream().filter(unit -> unit.getBar() == 2).forEach(unit -> unit.setAlongM(near + 23 * 0.3048));
        Outcome outcome = only(sample, "BAR-02");
        assertEquals(Result.FAIL, outcome.result());
        assertEquals(23 * 0.3048, outcome.value().getAsDouble(), 1e-3);
        assertEquals(152.4, outcome.limit().getAsDouble(), 1e-9);
        assertTrue(outcome.explanation().english().contains("1261."), outcome.explanation().english());
        assertTrue(outcome.explanation().english().contains("7 m"), outcome.explanation().english());
    }

    /** Table 5-3: 60 m before the threshold, 2 degrees 30 minutes less 0.57; at 2060 m that is 67.39 m. */
    @Test
    void heightOfTheSurfaceOverAnObstacle() {
        Sample sample = Bases.row();
        sample.obstacle("mast", -2060, 0, 170);
        Outcome mast = sample.outcomes("OBS-01").stream().filter(outcome ->
                outcome.elementPath().english().equals("mast")).findFirst().orElseThrow();
        assertEquals(70, mast.value().getAsDouble(), 1e-6);
        assertEquals(2000 * Math.tan(Math.toRadians(1.93)), mast.limit().getAsDouble(), 1e-6);
        // the mast is known to a thousandth of a micrometre, which is added on the safe side
        assertEquals(mast.limit().getAsDouble() - 70, mast.margin().getAsDouble(), 3e-9);
        Outcome summary = sample.outcomes("OBS-01").stream().filter(outcome ->
                outcome.elementPath().english().endsWith("indicator")).findFirst()
                .orElseThrow();
        assertEquals(mast.margin().getAsDouble(), summary.value().getAsDouble(), 3e-9);
        for (String remedy : List.of("raise the slope", "turn", "displace the threshold", "upwind")) {
            assertTrue(summary.explanation().english().contains(remedy), remedy + ": " + summary.explanation());
        }
    }

    /** At 15 km a tangent plane would hide 17.7 m; heights are differences of elevations, so the mast counts in full. */
    @Test
    void noCurvatureLowersAnObstacleFarOut() {
        Sample sample = Bases.row();
        double limit = (15_000 - 60) * Math.tan(Math.toRadians(1.93));
        sample.obstacle("mast", -15_000, 0, 100 + limit + 0.1);
        Outcome mast = sample.outcomes("OBS-01").stream().filter(outcome ->
                outcome.elementPath().english().equals("mast")).findFirst().orElseThrow();
        assertEquals(Result.FAIL, mast.result());
        assertEquals(-0.1, mast.margin().getAsDouble(), 1e-6);
    }

    /** Where the surface hangs on the indicator (Table M-2), it starts 60 m before the threshold for a row that was not shifted. */
    @ParameterizedTest
    @CsvSource({"0, 0, -60", "-1, 20.4465, -60", "-1, 40.4465, -60"})
    void aLevelDifferenceIsNoShiftOfTheSurface(double lensM, double movedM, double startM) {
        Sample sample = Sample.runway("easa", "four-unit-row");
        sample.units(unit -> unit.setLensElevationM(unit.getLensElevationM() + lensM));
        sample.moveAlong(movedM);
        Siting laid = AidLayouts.evaluate(sample.aid(), RuleSets.find("easa").orElseThrow());
        assertEquals(startM, laid.surface().orElseThrow().startAlongM(), 0.02);
    }

    /** What is missing is named, for people. */
    @Test
    void whatIsMissingIsNamed() {
        Sample sample = Bases.row();
        sample.end().setThresholdElevationM(null);
        sample.runway().setWidthM(null);
        assertEquals(List.of("threshold elevation"), missing(sample, "DATA-01"));
        assertEquals(List.of("runway width"), missing(sample, "DATA-02"));
        assertEquals(List.of("runway width"), missing(sample, "ROW-03"));
        assertTrue(missing(sample, "EYE-01").get(0).contains("elevation"), missing(sample, "EYE-01").toString());
    }

    private static List<String> missing(Sample sample, String rule) {
        return only(sample, rule).missing().stream().map(Message::english).toList();
    }

    /** A value from memory decides the spacing until somebody confirms it. */
    @Test
    void aConfirmationSettlesAPass() {
        Sample sample = Bases.row();
        Outcome open = only(sample, "ROW-04");
        assertEquals(Result.PASS, open.result());
        assertTrue(open.toConfirm());
        assertEquals(Optional.of(Severity.WARNING), open.weight());
        for (String key : List.of("four-unit-row.unit-spacing-m", "four-unit-row.unit-spacing-tolerance-m")) {
            ValueConfirmation confirmation = SlopewrightFactory.eINSTANCE.createValueConfirmation();
            confirmation.setValueKey(key);
            confirmation.setRuleSetKey("icao:5th");
            confirmation.setValue(key.endsWith("tolerance-m") ? 1.0 : 9.0);
            confirmation.setUnit("m");
            confirmation.setSource("the issued figure");
            confirmation.setPerson("J. Doe");
            confirmation.setDate("2026-05-01");
            Confirmations.keep(sample.project(), confirmation);
        }
        Outcome settled = only(sample, "ROW-04");
        assertFalse(settled.toConfirm());
        assertEquals(Optional.empty(), settled.weight());
        assertTrue(settled.citation().orElseThrow().confirmation().contains("J. Doe"));
    }

    /** The limit of a rule is the overridden one, and its source the override. */
    @Test
    void anOverrideIsTheLimit() {
        Sample sample = Bases.row();
        ValueOverride override = SlopewrightFactory.eINSTANCE.createValueOverride();
        override.setValueKey("four-unit-row.clearance-to-other-pavement-m");
        override.setValue(60.0);
        override.setReason("local rule");
        override.setPerson("J. Doe");
        sample.project().getOverrides().add(override);
        Outcome outcome = only(sample, "ROW-06");
        assertEquals(Result.FAIL, outcome.result());
        assertEquals(60, outcome.limit().getAsDouble());
        assertFalse(outcome.toConfirm());
        assertTrue(outcome.citation().orElseThrow().text().english().contains("local rule"));
    }

    /** The clearance rests on the allowance of 2 minutes, which is from memory, though the table is published. */
    @Test
    void theAllowanceMakesAClearanceOneToConfirm() {
        Outcome outcome = only(Bases.row(), "WHEEL-02");
        assertTrue(outcome.citation().orElseThrow().toConfirm(), "the weakest source comes first");
        assertTrue(outcome.citations().stream().anyMatch(source -> source.text().english().contains("Table 5-2") && !source.toConfirm()));
        assertTrue(outcome.toConfirm());
    }

    /** Two readings of the same layout under two rule sets stand side by side. */
    @Test
    void theSameLayoutUnderTwoRuleSets() {
        Sample sample = Bases.row();
        CheckResult icao = Checks.run(sample.project(), Optional.of("icao:5th"));
        CheckResult faa = Checks.run(sample.project(), Optional.of("faa"));
        assertEquals("icao", icao.rules().key());
        assertEquals("5th", icao.rules().edition());
        assertEquals("faa", faa.rules().key());
        assertEquals(Result.FAIL, of(faa, "ROW-03").result(), "15.00 m are closer than 50 ft");
        assertEquals(Result.PASS, of(icao, "ROW-03").result());
        assertEquals(faa.findings().get(0).weight().orElseThrow(), faa.worst().orElseThrow());
    }

    private static Outcome of(CheckResult result, String rule) {
        return result.outcomes().stream().filter(outcome -> outcome.rule().equals(rule)).findFirst().orElseThrow();
    }
}
