package slopewright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.landing.LandingWind;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.testkit.DemoProjects;

/** The briefing for the pilot and the pocket sheet of the demo's portable unit. */
class FieldPapersTest {
    private static final LocalDate DAY = LocalDate.of(2026, 6, 1);

    @TempDir
    private Path folder;
    private Project project;
    private ApproachAid aid;

    @BeforeEach
    void load() {
        project = DemoProjects.load(DemoProjects.copy(DemoProjects.GOOD, folder));
        aid = DemoProjects.aid(project, "Portable unit, north pad");
    }

    private static ReportOptions options(Locale language) {
        return new ReportOptions(DAY.toString(), PaperSize.A4, ReportTemplate.builtIn(), language);
    }

    private SetUpCard briefing(FieldPapers.Form form, Locale language) throws ReportException {
        return FieldPapers.briefing(ProjectEvaluation.of(project, Optional.empty()), aid, DAY, options(language), form);
    }

    private static String text(SetUpCard paper) {
        return new String(paper.bytes(), StandardCharsets.UTF_8);
    }

    /** On 7.04°, 3.8 m over the hover point: at one mile 3.8 + 1852 tan 7.04° = 232.5 m, or 763 ft. */
    @Test
    void theBriefingIsCopied() throws ReportException {
        SetUpCard paper = briefing(FieldPapers.Form.TXT, Locale.ENGLISH);
        assertTrue(paper.isReady(), paper.reasons().toString());
        String text = text(paper);
        assertTrue(text.contains("Landing direction: 252° magnetic (250° true)"), text);
        assertTrue(text.contains("on slope | steady green | 6°32.4' to 7°32.4'"), text);
        assertTrue(text.contains("1 NM | 763 ft | 233 m"), text);
        assertTrue(text.contains("does not replace the current edition"), "the caution");
        assertFalse(text.contains("NOT FOR USE"), text);
    }

    @Test
    void theTelephoneNeedsNothingFromElsewhere() throws ReportException {
        String page = text(briefing(FieldPapers.Form.HTML, Locale.ENGLISH));
        assertTrue(page.contains("width=device-width"), page);
        assertFalse(page.contains("<script") || page.contains("href=") || page.contains("src=") || page.contains("url("), page);
        assertTrue(page.contains("steady amber") && page.contains("Never set up or switch on"), page);
    }

    @Test
    void whatIsNotReadySaysSoFirst() throws ReportException {
        project.getAerodrome().getObstacleSurveys().clear();
        SetUpCard paper = briefing(FieldPapers.Form.TXT, Locale.ENGLISH);
        assertFalse(paper.isReady());
        assertTrue(text(paper).startsWith("NOT FOR USE\n- "), text(paper));
        SetUpCard pocket = FieldPapers.pocket(ProjectEvaluation.of(project, Optional.empty()), aid, DAY, Optional.empty(),
                options(Locale.ENGLISH), Reports.Format.HTML);
        assertFalse(pocket.isReady());
        assertTrue(text(pocket).contains("NOT FOR USE") && text(pocket).contains("no direction is clear"), text(pocket));
    }

    /**
     * 90 kt, 700 ft/min in still air: asin(700 / (101.2686 × 90)) = 4.40°. Against 20 kt: 90 cos 4.40° − 20 = 69.73 kt over the ground,
     * atan(700 / (101.2686 × 69.73)) = 5.66°. 140 kt and 400 ft/min: 1.62°.
     */
    @Test
    void thePocketSheetHasSlopesDirectionsAndTilt() throws Exception {
        SetUpCard paper = FieldPapers.pocket(ProjectEvaluation.of(project, Optional.empty()), aid, DAY, Optional.of(new LandingWind(240,
                15)), options(Locale.ENGLISH), Reports.Format.HTML);
        String page = text(paper).replace("\n", "");
        assertTrue(page.contains("<td>90 kt</td><td>2.5°</td><td>3.1°</td><td>3.8°</td><td>4.4°</td>"), page);
        assertTrue(page.contains("<td>90 kt</td><td>3.2°</td><td>4.0°</td><td>4.9°</td><td>5.7°</td>"), page);
        assertTrue(page.contains("<td>140 kt</td><td>1.6°</td>"), page);
        assertTrue(page.contains("is clear from") && page.contains("<svg") && page.contains("Tilted down"), page);
        SetUpCard pdf = FieldPapers.pocket(ProjectEvaluation.of(project, Optional.empty()), aid, DAY, Optional.empty(),
                options(Locale.ENGLISH), Reports.Format.PDF);
        try (PDDocument document = Loader.loadPDF(pdf.bytes())) {
            assertEquals(2, document.getNumberOfPages());
        }
    }

    @Test
    void germanIsSaidInGerman() throws ReportException {
        String text = text(briefing(FieldPapers.Form.TXT, Locale.GERMAN));
        assertTrue(text.contains("Landerichtung: 252° missweisend (250° rechtweisend)"), text);
        assertTrue(text.contains("HÖHEN AUF DEM GLEITWEG"), text);
    }
}
