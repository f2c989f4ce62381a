package slopewright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ReadBacks;
import slopewright.evaluation.asbuilt.AsBuilt;
import slopewright.evaluation.asbuilt.SettingTolerance;
import slopewright.messages.Message;
import slopewright.model.ApproachAid;
import slopewright.model.Inspection;
import slopewright.model.LightUnit;
import slopewright.model.MeasuredUnit;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.util.Ids;

/** Measured units and flight inspections of the row at 27: slope 3.5 degrees, 278.217 m, lenses 0.442 m below the threshold. */
class AsBuiltTest {

    private Project project;
    private ApproachAid aid;

    @BeforeEach
    void load() {
        project = Demo.project("harrow-vale");
        aid = Demo.aid(project, "PAPI 27");
    }

    private AsBuilt built() {
        return AsBuilt.of(AidEvaluation.of(aid));
    }

    private List<String> findings() {
        return built().findings().stream().map(Message::english).toList();
    }

    private void measure(String label, double offMin, double offAlongM, double offLevelM) {
        LightUnit unit = aid.getUnits().stream().filter(one -> label.equals(one.getLabel())).findFirst().orElseThrow();
        MeasuredUnit measured = SlopewrightFactory.eINSTANCE.createMeasuredUnit();
        measured.setSettingDeg(unit.getSettingDeg() + offMin / 60);
        measured.setAlongM(unit.getAlongM() + offAlongM);
        measured.setRightM(unit.getRightM());
        measured.setLensElevationM(unit.getLensElevationM() + offLevelM);
        unit.setMeasured(measured);
    }

    private void measureAll(double offMin) {
        for (String label : List.of("A", "B", "C", "D")) {
            measure(label, offMin, 0, 0);
        }
    }

    private Inspection inspection() {
        Inspection inspection = SlopewrightFactory.eINSTANCE.createInspection();
        inspection.setPerson("N. Example");
        inspection.setOrganisation("Flight inspection unit (invented)");
        inspection.setDate("2026-05-31");
        aid.getInspections().add(inspection);
        return inspection;
    }

    private void readBack() {
        Ids.assign(project);
        ReadBacks.keep(project, ReadBacks.elements(project), "N. Ferrow", "2026-06-01");
    }

    private String sheet() throws ReportException {
        return Demo.text(new String(CommissioningSheets.write(Demo.evaluation(project), aid, Demo.OPTIONS, Reports.Format.HTML),
                StandardCharsets.UTF_8));
    }

    /** The rule set as remembered: set within 1 minute, set again beyond 3 (values.csv, setting-accuracy-min and reset-beyond-min). */
    @ParameterizedTest
    @CsvSource({"0.9, WITHIN, within tolerance", "-1, WITHIN, within tolerance", "1.1, OUTSIDE, lower by 1.1' (outside the accuracy of "
            + "setting)", "-3, OUTSIDE, raise by 3.0' (outside the accuracy of setting)", "3.2, SET_AGAIN, lower by 3.2'",
        "-4, SET_AGAIN, raise by 4.0'"})
    void aMeasuredAngleComesToAVerdictAndAnAdvice(double offMin, SettingTolerance.Verdict verdict, String advice) {
        measure("C", offMin, 0, 0);
        AsBuilt.Unit unit = built().units().stream().filter(one -> "C".equals(one.id())).findFirst().orElseThrow();
        assertEquals(offMin, unit.offMin().getAsDouble(), 1e-6);
        assertEquals(verdict, unit.verdict());
        assertEquals(advice, unit.advice().orElseThrow().english());
        assertEquals(List.of("D", "B", "A"), built().notMeasured());
    }

    /** By hand: the lowest on-slope signal is B's 3 degrees 20 minutes less 2; 4 minutes higher, 1.5 m farther in, 0.1 m higher. */
    @Test
    void heightsFollowAnglesPlacesAndLevels() {
        for (String label : List.of("A", "B", "C", "D")) {
            measure(label, 4, 1.5, 0.1);
        }
        AsBuilt result = built();
        double planned = 90.358 - 90.8 + 278.217 * Math.tan(Math.toRadians(3 + 18 / 60.0));
        double expected = 90.358 - 90.8 + 0.1 + 279.717 * Math.tan(Math.toRadians(3 + 22 / 60.0));
        assertEquals(planned, result.planned().mehtM(), 0.002);
        assertEquals(expected, result.built().mehtM(), 0.002);
        assertEquals(expected - 6.6, result.built().wheelClearanceM().getAsDouble(), 0.002);
        assertTrue(result.builtMarginM().getAsDouble() > result.plannedMarginM().getAsDouble());
        AsBuilt.Unit unit = result.units().get(0);
        assertEquals(1.5, unit.offAlongM().getAsDouble(), 1e-9);
        assertEquals(0.1, unit.offLevelM().getAsDouble(), 1e-9);
        assertEquals(0, unit.offRightM().getAsDouble(), 1e-9);
    }

    @Test
    void whatWasNotMeasuredCountsAsPlanned() {
        AsBuilt result = built();
        assertFalse(result.isMeasured());
        assertSame(result.planned(), result.built());
        assertEquals(List.of("No angle was measured of D, C, B and A.", "No flight inspection was entered."), findings());
    }

    /** Found at 3 degrees 34 minutes, four above the slope; 8000 m are the range that the rule set cites. */
    @Test
    void aFlightInspectionIsHeldAgainstThePlan() throws ReportException {
        measureAll(0.5);
        Inspection inspection = inspection();
        inspection.setOnSlopeAngleDeg(3 + 34 / 60.0);
        inspection.setUsableRangeM(7200.0);
        inspection.setAzimuthLeftDeg(-8.5);
        inspection.setAzimuthRightDeg(8.0);
        inspection.setObstacleClear(false);
        inspection.setRemarks("hazy below 1000 ft");
        AsBuilt.Flight flight = built().flights().get(0);
        assertEquals(4, flight.offMin().getAsDouble(), 1e-6);
        assertTrue(flight.advice().orElseThrow().english().startsWith("lower by 4.0'"), flight.advice().toString());
        assertEquals(List.of("The flight inspection found the beam not clear of obstacles.",
                "The slope found in flight is off by 4.0', more than the 3.0' beyond which units are set again; measure the angles on the "
                        + "ground again.",
                "The flight inspection found a range of 7200 m, less than the published 8000 m."), findings());
        String text = sheet();
        for (String expected : List.of("3\u00b034'", "+4.0'; lower by 4.0'", "NOT REACHED", "-8.5\u00b0, 8\u00b0", "NO",
                "Inspected by N. Example, Flight inspection unit (invented), 2026-05-31. hazy below 1000 ft",
                "cannot be accepted on this sheet", "Accuracy of setting: 1.0', UK CAP 168 (restated), 6.200")) {
            assertTrue(text.contains(expected), expected + " is not in " + text);
        }
    }

    @Test
    void nothingStandsAgainstAnIndicatorThatWasSetAndFlownWell() throws ReportException {
        measureAll(-0.5);
        Inspection inspection = inspection();
        inspection.setOnSlopeAngleDeg(3.5);
        inspection.setUsableRangeM(9000.0);
        inspection.setObstacleClear(true);
        assertEquals(List.of(), findings());
        assertEquals("as planned", built().flights().get(0).advice().orElseThrow().english());
        readBack();
        String text = sheet();
        assertTrue(text.contains("As measured and flown, the indicator keeps the tolerances of the rule set."), text);
        assertTrue(text.contains("Twin-jet, narrow body"), text);
    }

    /** 90 minutes too low, the wheels of the twin-jet (6.60 m) are below their minimum of 5 m and the hill stands through. */
    @Test
    void wheelsAndObstaclesStandAgainstAcceptance() {
        measureAll(-90);
        String findings = findings().toString();
        assertTrue(findings.contains("Wheels of Twin-jet, narrow body clear the threshold by"), findings);
        assertTrue(findings.contains("through the obstacle surface as built"), findings);
        assertTrue(findings.contains("Unit A: raise by 90.0'."), findings);
    }

    /** The row at 27 was measured where a row may not stand: the inner unit 15 m from the edge, 1 m may be off; here 10 m. */
    @Test
    void whatTheRulesSayOfWhatWasBuiltStandsAgainstAcceptance() throws ReportException {
        measureAll(0);
        aid.getUnits().forEach(unit -> unit.getMeasured().setRightM(unit.getRightM() + 5));
        Inspection inspection = inspection();
        inspection.setOnSlopeAngleDeg(3.5);
        inspection.setUsableRangeM(9000.0);
        inspection.setObstacleClear(true);
        readBack();
        assertEquals(List.of(), findings());
        String text = sheet();
        assertTrue(text.contains("cannot be accepted on this sheet"), text);
        assertTrue(text.contains("As measured, PAPI 27 does not keep ROW-03"), text);
    }

    /** Built as planned, but the plan itself is not kept: the spacing is 9 m, 1 m may be off; here 12 m from B to A. */
    @Test
    void whatTheRulesSayOfThePlanStandsAgainstAcceptance() throws ReportException {
        LightUnit outer = aid.getUnits().get(3);
        outer.setRightM(outer.getRightM() - 3);
        measureAll(0);
        Inspection inspection = inspection();
        inspection.setOnSlopeAngleDeg(3.5);
        inspection.setUsableRangeM(9000.0);
        inspection.setObstacleClear(true);
        readBack();
        String text = sheet();
        assertTrue(text.contains("cannot be accepted on this sheet"), text);
        assertTrue(text.contains("ROW-04"), text);
    }
}
