package slopewright.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import javax.imageio.ImageIO;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

import slopewright.checks.Checks;
import slopewright.checks.Outcome;
import slopewright.checks.Verdict;
import slopewright.drawing.plan.PlanScene;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Scene;
import slopewright.evaluation.AidEvaluation;
import slopewright.messages.MessageRenderer;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.ValueConfirmation;
import slopewright.model.ValueOverride;
import slopewright.model.util.Projects;

/** Reports and drawings as files. */
class ReportsTest {

    /** What is found is printed with its reason, what is met with its source; what a rule does not concern is counted. */
    @Test
    void theReportPrintsEveryOutcomeWithItsSource() throws ReportException {
        for (String name : new String[] {"harrow-vale", "harrow-vale-faults"}) {
            String html = Demo.html(Demo.project(name));
            for (Outcome outcome : Checks.run(Demo.project(name), Optional.empty()).outcomes()) {
                assertTrue(html.contains(Demo.escaped(outcome.rule())), outcome.toString());
                if (outcome.verdict() == Verdict.NOT_MET || outcome.verdict() == Verdict.TO_CLEAR_UP) {
                    assertTrue(html.contains(Demo.escaped(outcome.explanation().english())), outcome.toString());
                    assertTrue(html.contains(Demo.escaped(outcome.elementPath())), outcome.toString());
                }
                if (outcome.verdict() != Verdict.NOT_APPLICABLE) {
                    assertTrue(html.contains(Demo.escaped(outcome.title().english())), outcome.toString());
                    outcome.citation().ifPresent(citation -> assertTrue(html.contains(Demo.escaped(citation.text())), citation.toString()));
                }
            }
        }
    }

    @Test
    void theReportCarriesCautionsRuleSetDataAndMeht() throws ReportException {
        String html = Demo.html(Demo.project("harrow-vale"));
        Cautions.in(Locale.ENGLISH).forEach(text -> assertTrue(html.contains(Demo.escaped(text)), text));
        assertTrue(html.contains("Spain RD 862/2009 transposing Annex 14 Vol I 5th ed."));
        assertTrue(html.contains("Eye height over the threshold (MEHT)"));
        assertTrue(html.contains("Data to publish for the aerodrome"));
        assertTrue(html.contains("Circuits and loads"));
        assertTrue(html.contains("no document was compared"));
        assertTrue(html.contains("2026-06-01"));
    }

    /** Seven drawings of each of the four indicators: layout, units, two sections, surface, signals, pilot's view. */
    @Test
    void theReportIsWellFormedAndHoldsItsDrawings() throws ReportException {
        String html = Demo.html(Demo.project("harrow-vale"));
        assertEquals(7 * 4, Demo.parsed(html).getElementsByTagName("svg").getLength());
    }

    /** One row a finding, one a rule for all that is met, and every rule that has nothing to say named with how often. */
    @Test
    void theMatrixCountsEveryOutcome() throws ReportException {
        Project project = Demo.project("harrow-vale-faults");
        List<Outcome> outcomes = Checks.run(project, Optional.empty()).outcomes();
        String html = Demo.html(project);
        String matrix = html.substring(html.indexOf("<table class=\"outcomes\">"));
        String after = matrix.substring(matrix.indexOf("</table>"));
        matrix = matrix.substring(0, matrix.indexOf("</table>"));
        Map<String, Map<Verdict, Long>> counts = outcomes.stream().collect(Collectors.groupingBy(Outcome::rule,
                Collectors.groupingBy(Outcome::verdict, Collectors.counting())));
        long findings = outcomes.stream().filter(outcome -> outcome.verdict() == Verdict.NOT_MET
                || outcome.verdict() == Verdict.TO_CLEAR_UP).count();
        long met = counts.values().stream().filter(of -> of.containsKey(Verdict.MET)).count();
        assertEquals(findings + met + 1, matrix.split("<tr", -1).length - 1, "and the head");
        String text = matrix;
        counts.forEach((rule, of) -> {
            if (of.containsKey(Verdict.MET)) {
                assertTrue(text.contains("<td>" + rule + "</td>"), rule);
                assertTrue(text.contains(">" + of.get(Verdict.MET) + " met"), rule + " " + of);
            }
            if (of.containsKey(Verdict.NOT_APPLICABLE)) {
                assertTrue(after.contains(rule + " (" + of.get(Verdict.NOT_APPLICABLE) + ")"), rule + " " + of);
            }
        });
        assertEquals(outcomes.stream().filter(outcome -> outcome.verdict() == Verdict.NOT_MET).count(),
                matrix.split(": NOT MET \\(", -1).length - 1);
    }

    /** What is open about something that indicators share is open in the row of each, first page or not; 4 aids, one without a fault. */
    @Test
    void whatIsSharedIsOpenInEveryRowOfTheFirstPage() throws ReportException {
        Project project = Demo.project("harrow-vale");
        assertEquals(4, rowsWithoutFindings(project));
        project.getAerodrome().setVerticalDatum(null);
        List<Outcome> open = Checks.run(project, Optional.empty()).outcomes().stream()
                .filter(outcome -> outcome.verdict() == Verdict.NOT_MET || outcome.verdict() == Verdict.TO_CLEAR_UP).toList();
        assertFalse(open.isEmpty());
        assertEquals(0, rowsWithoutFindings(project), open.toString());
    }

    private static int rowsWithoutFindings(Project project) throws ReportException {
        String html = Demo.html(project);
        String table = html.substring(html.indexOf("<table class=\"summary\">"));
        return table.substring(0, table.indexOf("</table>")).split("0 not met, 0 to clear up", -1).length - 1;
    }

    /** The calculation of the row at 09: 0.73 m and 330.46 m at 2 degrees 43 minutes make 16.41 m; less 6.60 m are 9.81 m. */
    @Test
    void theCalculationPutsNumbersIntoTheFormulas() throws ReportException {
        assertEquals(16.41, 0.73 + 330.46 * Math.tan(Math.toRadians(2 + 43 / 60.0)), 0.005);
        String text = Demo.text(Demo.html(Demo.project("harrow-vale")));
        assertTrue(text.contains("0.73 m + 330.46 m \u00d7 tan 2\u00b043' = 16.41 m"), text);
        assertTrue(text.contains("eye path to wheel path = 16.41 m \u2212 6.60 m = 9.81 m"), text);
        assertTrue(text.contains("B = 3\u00b000' \u2212 15' = 2\u00b045'"), text);
        assertTrue(text.contains("edge of B \u2212 allowance = 2\u00b045' \u2212 2' = 2\u00b043'"), text);
        assertTrue(text.contains("Chosen: PAPI. It is one of "), text);
    }

    /** The mast of the demo raised to 400 m stands through the surface of 09: the report says so and what would cure it. */
    @Test
    void anObstacleThroughTheSurfaceHasItsRemedies() throws ReportException {
        Project project = Demo.project("harrow-vale");
        String before = Demo.text(Demo.html(project));
        assertFalse(before.contains("Remove or lower what penetrates"), before);
        project.getAerodrome().getObstacles().stream().filter(obstacle -> "Windle mast".equals(obstacle.getName())).findFirst()
                .orElseThrow()
                .setTopElevationM(400.0);
        String text = Demo.text(Demo.html(project));
        assertTrue(text.contains("Governing: Windle mast"), text);
        assertTrue(text.contains("Remove or lower what penetrates, or: "), text);
    }

    @Test
    void anOverrideAConfirmationAndWhatIsOpenArePrinted() throws ReportException {
        Project project = Demo.project("harrow-vale");
        ValueOverride override = SlopewrightFactory.eINSTANCE.createValueOverride();
        override.setId("override-1");
        override.setValueKey("four-unit-row.reset-beyond-min");
        override.setValue(2.5);
        override.setReason("the operator's maintenance manual asks for less");
        override.setPerson("N. Example");
        override.setDate("2026-05-30");
        project.getOverrides().add(override);
        String text = Demo.text(Demo.html(project));
        assertTrue(text.contains("the operator's maintenance manual asks for less"), text);
        assertTrue(text.contains("Values to be confirmed"), text);
        assertTrue(text.contains("Values that were confirmed"), text);
        for (ValueConfirmation confirmation : project.getConfirmations()) {
            assertTrue(text.contains(confirmation.getValueKey()), confirmation.getValueKey());
        }
    }

    @Test
    void wordsOfTheProjectAreTextAndNothingElse() throws ReportException {
        Project project = Demo.project("harrow-vale");
        project.setName("A & B <script>alert(1)</script> \u0007 \"x\"");
        project.setAuthor("</td></tr></table><img src='file:///etc/hostname'/>");
        String html = Demo.html(project);
        assertFalse(html.contains("<script"), html);
        assertFalse(html.contains("<img"), html);
        assertTrue(Demo.text(html).contains("A & B <script>alert(1)</script> ? \"x\""));
        assertTrue(Reports.write(project, Optional.empty(), Demo.OPTIONS, Reports.Format.PDF).length > 0);
    }

    @Test
    void aProjectWithoutAnythingHasAReportThatConcludesNothing() throws ReportException {
        String text = Demo.text(Demo.html(SlopewrightFactory.eINSTANCE.createProject()));
        assertTrue(text.contains("nothing could be evaluated; no conclusion may be drawn."), text);
        assertTrue(text.contains("The project describes no aerodrome."), text);
    }

    @Test
    void thePdfSaysWhatTheReportSaysInTheSameBytes() throws ReportException, IOException {
        byte[] first = Reports.write(Demo.project("harrow-vale"), Optional.empty(), Demo.OPTIONS, Reports.Format.PDF);
        assertArrayEquals(first, Reports.write(Demo.project("harrow-vale"), Optional.empty(), Demo.OPTIONS, Reports.Format.PDF));
        try (PDDocument document = Loader.loadPDF(first)) {
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("Visual approach slope indicators"), text);
            assertTrue(text.contains("330.46"));
            assertTrue(text.contains("3°35'"));
            assertTrue(text.contains("Page 2 of " + document.getNumberOfPages()));
            assertTrue(document.getNumberOfPages() > 20);
        }
    }

    @Test
    void anUnknownRuleSetIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> Reports.write(Demo.project("harrow-vale"), Optional.of("moon"), Demo.OPTIONS,
                Reports.Format.HTML));
    }

    @Test
    void drawingsComeInFourForms() throws ReportException, IOException {
        ApproachAid aid = Projects.aids(Demo.project("harrow-vale")).get(0);
        Scene scene = PlanScene.layout(DrawnAid.of(AidEvaluation.of(aid), MessageRenderer.of(Locale.ENGLISH)));
        for (Drawings.Format format : Drawings.Format.values()) {
            assertArrayEquals(Drawings.write(scene, format), Drawings.write(scene, format), format.name());
        }
        assertTrue(new String(Drawings.write(scene, Drawings.Format.SVG), StandardCharsets.UTF_8).startsWith("<?xml "));
        assertTrue(new String(Drawings.write(scene, Drawings.Format.DXF), StandardCharsets.UTF_8).endsWith("EOF\n"));
        assertEquals(277 * 8, ImageIO.read(new ByteArrayInputStream(Drawings.write(scene, Drawings.Format.PNG))).getWidth());
        try (PDDocument document = Loader.loadPDF(Drawings.write(scene, Drawings.Format.PDF))) {
            assertEquals(1, document.getNumberOfPages());
        }
    }
}
