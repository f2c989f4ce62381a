package slopewright.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import slopewright.drawing.plan.PlanScene;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.sheet.TitleBlock;
import slopewright.evaluation.AidLayouts;
import slopewright.evaluation.portable.PortableSetUp;
import slopewright.model.ApproachAid;
import slopewright.model.LightUnit;
import slopewright.model.MeasuredUnit;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** What goes into the field: set-up card, commissioning sheet, drawings that are handed over. */
class FieldDocumentsTest {

    private static final LocalDate DAY = LocalDate.of(2026, 6, 1);
    private static final String PORTABLE = "Portable unit, north pad";

    private static byte[] card(Project project, ApproachAid aid, RuleSet rules, Reports.Format format) throws ReportException {
        return SetUpCards.write(project, aid, rules, DAY, PaperSize.A4, format);
    }

    @ParameterizedTest
    @EnumSource(Reports.Format.class)
    void theCardHasTheNumbersOfTheSetUpInTheSameBytes(Reports.Format format) throws ReportException, IOException {
        Project project = Demo.project("harrow-vale");
        ApproachAid aid = Demo.aid(project, PORTABLE);
        RuleSet rules = Demo.rules(project, aid);
        byte[] written = card(project, aid, rules, format);
        assertArrayEquals(written, card(project, aid, rules, format));
        String text = format == Reports.Format.PDF ? Demo.pdfText(written) : Demo.text(new String(written, StandardCharsets.UTF_8));
        PortableSetUp found = PortableSetUp.of(project, aid, rules, DAY);
        for (String expected : List.of("Set-up card", "Caution", "2026-06-01", "7\u00b002.4'", "26.72 m past the hover point",
                String.format("%.1f\u00b0 by compass (70.0\u00b0 true)", found.azimuth().beamMagneticDeg()), "ground", "Sight line",
                "lower edge of the red sector", "red | 6\u00b032.4' | green | 7\u00b032.4' | amber", "Keep the power off")) {
            assertTrue(text.contains(expected), expected + " is not in " + text);
        }
        Cautions.TEXT.forEach(caution -> assertTrue(text.contains(caution.replaceAll("\\s+", " ")), caution));
        assertEquals(!found.isReady(), text.contains("NOT FOR USE YET"));
    }

    /** A card that goes into the field is one sheet, on both papers. */
    @ParameterizedTest
    @EnumSource(PaperSize.class)
    void theCardIsOnePage(PaperSize paper) throws ReportException, IOException {
        Project project = Demo.project("harrow-vale");
        ApproachAid aid = Demo.aid(project, PORTABLE);
        byte[] written = SetUpCards.write(project, aid, Demo.rules(project, aid), DAY, paper, Reports.Format.PDF);
        try (PDDocument document = Loader.loadPDF(written)) {
            assertEquals(1, document.getNumberOfPages());
        }
        String text = Demo.pdfText(written);
        assertTrue(text.contains("Check the battery: 22 to 28 V with the unit lit"), text);
        assertTrue(text.contains("for 2026-06-01 only"), text);
    }

    /** Sectors from memory that nobody confirmed stand against the use of a card. */
    @Test
    void aCardThatIsNotReadySaysSoFirst() throws ReportException {
        Project project = Demo.project("harrow-vale");
        ApproachAid aid = Demo.aid(project, PORTABLE);
        aid.getEquipment().getSectors().clear();
        RuleSet unconfirmed = RuleSets.find("faa").orElseThrow();
        assertFalse(PortableSetUp.of(project, aid, unconfirmed, DAY).isReady());
        String text = Demo.text(new String(card(project, aid, unconfirmed, Reports.Format.HTML), StandardCharsets.UTF_8));
        assertTrue(text.indexOf("NOT FOR USE YET") > 0 && text.indexOf("NOT FOR USE YET") < text.indexOf("Numbers"), text);
        for (String blocker : PortableSetUp.of(project, aid, unconfirmed, DAY).blockers()) {
            assertTrue(text.contains(blocker), blocker);
        }
    }

    @ParameterizedTest
    @EnumSource(Reports.Format.class)
    void theSheetOfAnIndicatorThatWasNotMeasuredLeavesRoom(Reports.Format format) throws ReportException, IOException {
        Project project = Demo.project("harrow-vale");
        ApproachAid aid = Demo.aid(project, "PAPI 27");
        byte[] written = CommissioningSheets.write(project, aid, Demo.rules(project, aid), Demo.OPTIONS, format);
        assertArrayEquals(written, CommissioningSheets.write(project, aid, Demo.rules(project, aid), Demo.OPTIONS, format));
        String text = format == Reports.Format.PDF ? Demo.pdfText(written) : Demo.text(new String(written, StandardCharsets.UTF_8));
        assertTrue(text.contains("No unit has a measured angle yet"), text);
        assertTrue(text.contains("Flight inspection"), text);
        assertTrue(text.contains("Setting of the angle"), text);
        assertTrue(text.contains("from-memory"), text);
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
        String text = Demo.text(new String(CommissioningSheets.write(project, aid, Demo.rules(project, aid), Demo.OPTIONS,
                Reports.Format.HTML), StandardCharsets.UTF_8));
        assertTrue(text.contains("-3.0"), text);
        assertTrue(text.contains("raise by 3.0'"), text);
        assertTrue(text.contains("N. Example, 2026-05-30, clinometer 7"), text);
        assertTrue(text.contains("Units without a measured angle count as planned: D, C, A."), text);
        double change = 278.22 * (Math.tan(Math.toRadians(3 + 15 / 60.0)) - Math.tan(Math.toRadians(3 + 18 / 60.0)));
        assertTrue(text.contains(String.format("%+.2f", change)), change + " is not in " + text);
    }

    @Test
    void aSheetOfUnitsWithoutNumbersIsRefused() {
        Project project = Demo.project("harrow-vale");
        ApproachAid aid = Demo.aid(project, "PAPI 27");
        aid.getUnits().get(0).setSettingDeg(null);
        RuleSet rules = Demo.rules(project, aid);
        SitingException thrown = assertThrows(SitingException.class, () -> CommissioningSheets.write(project, aid, rules, Demo.OPTIONS,
                Reports.Format.HTML));
        assertTrue(thrown.getMessage().contains("setting"), thrown.getMessage());
    }

    @Test
    void everyFamilyHasAReportAndASheet() throws ReportException {
        Project project = Demo.project("every-family");
        String text = Demo.text(Demo.html(project));
        for (ApproachAid aid : Projects.aids(project)) {
            assertTrue(text.contains(Projects.path(aid)), Projects.path(aid));
            assertTrue(CommissioningSheets.write(project, aid, Demo.rules(project, aid), Demo.OPTIONS, Reports.Format.HTML).length > 1000);
        }
        assertFalse(text.contains("No layout could be worked out"), text);
        assertFalse(text.contains("NaN"), text);
    }

    @ParameterizedTest
    @EnumSource(Drawings.Format.class)
    void aDrawingWithATitleBlockHasTheSameBytesTwice(Drawings.Format format) throws ReportException {
        Project project = Demo.project("harrow-vale");
        ApproachAid aid = Demo.aid(project, "PAPI 09");
        RuleSet rules = Demo.rules(project, aid);
        var scene = PlanScene.layout(DrawnAid.of(aid, AidLayouts.asLaid(aid, rules)));
        TitleBlock block = TitleBlock.of(project, "Layout", rules.descriptor().title(), "2026-06-01");
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
