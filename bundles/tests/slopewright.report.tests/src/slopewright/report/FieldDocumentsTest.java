package slopewright.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import slopewright.drawing.plan.PlanScene;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.sheet.TitleBlock;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.MadeFrom;
import slopewright.messages.MessageRenderer;
import slopewright.model.ApproachAid;
import slopewright.model.LightUnit;
import slopewright.model.MeasuredUnit;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;

/** What goes into the field: commissioning sheets, and drawings that are handed over. */
class FieldDocumentsTest {

    @ParameterizedTest
    @EnumSource(Reports.Format.class)
    void theSheetOfAnIndicatorThatWasNotMeasuredLeavesRoom(Reports.Format format) throws ReportException, IOException {
        Project project = Demo.project("harrow-vale");
        ApproachAid aid = Demo.aid(project, "PAPI 27");
        byte[] written = CommissioningSheets.write(Demo.evaluation(project), aid, Demo.OPTIONS, format);
        assertArrayEquals(written, CommissioningSheets.write(Demo.evaluation(project), aid, Demo.OPTIONS, format));
        String text = format == Reports.Format.PDF ? Demo.pdfText(written) : Demo.text(new String(written, StandardCharsets.UTF_8));
        assertTrue(text.contains("No unit has a measured angle yet"), text);
        assertTrue(text.contains("Flight inspection"), text);
        assertTrue(text.contains("Setting of the angle"), text);
        assertTrue(text.contains("[from memory]"), text);
    }

    /** All of the demo is met; a unit of 09 that is not frangible is a fault of 09, which the sheet of 27 tells of the project alone. */
    @Test
    void theSheetSaysHowTheIndicatorAndTheProjectStand() throws ReportException {
        Project project = Demo.project("harrow-vale");
        assertTrue(verdict(project, "PAPI 27").startsWith("Met: 0 not met, 0 to clear up. The whole project: Met: 0 not met"),
                verdict(project, "PAPI 27"));
        LightUnit unit = Demo.aid(project, "PAPI 09").getUnits().get(3);
        unit.setFrangible(false);
        String own = verdict(project, "PAPI 09");
        assertTrue(own.matches("Not met: [1-9]\\d* not met.*The whole project: Not met: [1-9].*"), own);
        String other = verdict(project, "PAPI 27");
        assertFalse(other.startsWith("Not met"), other);
        assertTrue(other.matches(".*The whole project: Not met: [1-9].*"), other);
    }

    private static String verdict(Project project, String aid) throws ReportException {
        String text = Demo.text(new String(CommissioningSheets.write(Demo.evaluation(project), Demo.aid(project, aid), Demo.OPTIONS,
                Reports.Format.HTML), StandardCharsets.UTF_8));
        return text.replaceFirst(".*The layout by the check. This indicator: ", "").replaceFirst(" Caution.*", "");
    }

    /** B of 27 is set to 3 degrees 20 minutes and decides the lowest on-slope signal, 2 minutes below; 3 minutes too low, at 278.22 m. */
    @Test
    void theSheetAdvisesHowToSetAgainAndWorksTheHeightsOutAgain() throws ReportException {
        Project project = Demo.project("harrow-vale");
        ApproachAid aid = Demo.aid(project, "PAPI 27");
        LightUnit unit = aid.getUnits().stream().filter(one -> "B".equals(one.getLabel())).findFirst().orElseThrow();
        MeasuredUnit measured = SlopewrightFactory.eINSTANCE.createMeasuredUnit();
        measured.setSettingDeg(unit.getSettingDeg() - 3 / 60.0);
        measured.setPerson("N. Example");
        measured.setDate("2026-05-30");
        measured.setInstrument("clinometer 7");
        unit.setMeasured(measured);
        String text = Demo.text(new String(CommissioningSheets.write(Demo.evaluation(project), aid, Demo.OPTIONS,
                Reports.Format.HTML), StandardCharsets.UTF_8));
        assertTrue(text.contains("-3.0"), text);
        assertTrue(text.contains("raise by 3.0'"), text);
        assertTrue(text.contains("N. Example, 2026-05-30, clinometer 7"), text);
        assertTrue(text.contains("Units without a measured angle count as planned: D, C and A."), text);
        double change = 278.22 * (Math.tan(Math.toRadians(3 + 15 / 60.0)) - Math.tan(Math.toRadians(3 + 18 / 60.0)));
        assertTrue(text.contains(String.format("%+.2f", change)), change + " is not in " + text);
    }

    @Test
    void aSheetOfUnitsWithoutNumbersIsRefused() {
        Project project = Demo.project("harrow-vale");
        ApproachAid aid = Demo.aid(project, "PAPI 27");
        aid.getUnits().get(0).setSettingDeg(null);
        SitingException thrown = assertThrows(SitingException.class, () -> CommissioningSheets.write(Demo.evaluation(project),
                aid, Demo.OPTIONS, Reports.Format.HTML));
        assertTrue(thrown.getMessage().contains("setting"), thrown.getMessage());
    }

    @Test
    void everyFamilyHasAReportAndASheet() throws ReportException {
        Project project = Demo.project("every-family");
        String text = Demo.text(Demo.html(project));
        for (ApproachAid aid : Projects.aids(project)) {
            assertTrue(text.contains(Projects.path(aid).replace(" > ", ", ")), Projects.path(aid));
            assertTrue(CommissioningSheets.write(Demo.evaluation(project), aid, Demo.OPTIONS, Reports.Format.HTML).length > 1000);
        }
        assertFalse(text.contains("No layout could be worked out"), text);
        assertFalse(text.contains("NaN"), text);
    }

    @ParameterizedTest
    @EnumSource(Drawings.Format.class)
    void aDrawingWithATitleBlockHasTheSameBytesTwice(Drawings.Format format) throws ReportException {
        Project project = Demo.project("harrow-vale");
        ApproachAid aid = Demo.aid(project, "PAPI 09");
        MessageRenderer english = MessageRenderer.of(Locale.ENGLISH);
        AidEvaluation evaluation = AidEvaluation.of(aid);
        Scene scene = PlanScene.layout(DrawnAid.of(evaluation, english));
        TitleBlock block = TitleBlock.of(project, "Layout", MadeFrom.of(project, evaluation.rules()), "2026-06-01", english);
        byte[] written = Drawings.write(scene, block, format);
        assertArrayEquals(written, Drawings.write(scene, block, format));
        if (format == Drawings.Format.SVG) {
            String svg = Demo.text(new String(written, StandardCharsets.UTF_8));
            for (String expected : List.of("Harrow Vale", "2026-06-01", "330.46 m", "Drawn by")) {
                assertTrue(svg.contains(expected), expected);
            }
        }
    }
}
