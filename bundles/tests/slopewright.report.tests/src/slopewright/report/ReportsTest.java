package slopewright.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import javax.imageio.ImageIO;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

import slopewright.checks.CheckResult;
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
import slopewright.siting.ValueNames;
import slopewright.standards.Citation;

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
                    assertTrue(html.contains(Demo.escaped(outcome.elementPath().english())), outcome.toString());
                }
                if (outcome.verdict() != Verdict.NOT_APPLICABLE) {
                    assertTrue(html.contains(Demo.escaped(outcome.title().english())), outcome.toString());
                    outcome.citation().ifPresent(citation -> assertTrue(html.contains(Demo.escaped(citation.text().english()))
                            || inAnnex(html, citation), citation.toString()));
                }
            }
        }
    }

    /** The document stands in the list of the annex, and its number with the clause in a cell of a table. */
    private static boolean inAnnex(String html, Citation citation) {
        Matcher listed = Pattern.compile("\\[(\\d+)] " + Pattern.quote(Demo.escaped(citation.source().title().english())) + " \\["
                + Pattern.quote(Demo.escaped(citation.source().edition().english()))).matcher(html);
        return listed.find() && html.contains(("[" + listed.group(1) + "] " + Demo.escaped(citation.clause().english())).strip() + " [");
    }

    @Test
    void theReportCarriesCautionsRuleSetDataAndMeht() throws ReportException {
        String html = Demo.html(Demo.project("harrow-vale"));
        Cautions.in(Locale.ENGLISH).forEach(text -> assertTrue(html.contains(Demo.escaped(text)), text));
        assertTrue(html.contains("Annex 14 Vol I, 9th ed. (2022), and Vol II, 4th ed. (2013)"));
        assertTrue(html.contains("Eye height over the threshold (MEHT)"));
        assertTrue(html.contains("Data to publish for the aerodrome"));
        assertTrue(html.contains("Circuits and loads"));
        assertTrue(html.contains("no document was compared"));
        assertTrue(html.contains("2026-06-01"));
    }

    /** Two drawings of each of the four indicators, layout and section; all others are in the set of drawings. */
    @Test
    void theReportIsWellFormedAndHoldsItsDrawings() throws ReportException {
        String html = Demo.html(Demo.project("harrow-vale"));
        assertEquals(2 * 4, Demo.parsed(html).getElementsByTagName("svg").getLength());
    }

    /** A row a finding, a row a design rule for all that is met, two data rules a row, and what does not apply with how often. */
    @Test
    void theMatrixCountsEveryOutcome() throws ReportException {
        Project project = Demo.project("harrow-vale-faults");
        List<Outcome> outcomes = Checks.run(project, Optional.empty()).outcomes();
        String html = Demo.html(project);
        String annex = html.substring(html.indexOf("<table class=\"outcomes\">"));
        String design = annex.substring(0, annex.indexOf("</table>"));
        String data = annex.substring(design.length() + 8);
        data = data.substring(data.indexOf("<table class=\"outcomes\">"));
        String after = data.substring(data.indexOf("</table>"));
        data = data.substring(0, data.indexOf("</table>"));
        Map<String, Map<Verdict, Long>> counts = outcomes.stream().collect(Collectors.groupingBy(Outcome::rule,
                Collectors.groupingBy(Outcome::verdict, Collectors.counting())));
        for (var rule : counts.entrySet()) {
            Map<Verdict, Long> of = rule.getValue();
            boolean aboutData = rule.getKey().startsWith("DATA-") || rule.getKey().startsWith("REC-");
            String part = aboutData ? data : design;
            long findings = of.getOrDefault(Verdict.NOT_MET, 0L) + of.getOrDefault(Verdict.TO_CLEAR_UP, 0L);
            long met = of.containsKey(Verdict.MET) ? 1 : 0;
            assertEquals(findings + met, part.split("<td>" + rule.getKey() + " ", -1).length - 1, rule.getKey() + " " + of);
            if (met > 0 && !aboutData) {
                assertTrue(part.contains(">" + of.get(Verdict.MET) + " met: "), rule + " " + of);
            } else if (met > 0) {
                assertTrue(part.matches("(?s).*<td>" + rule.getKey()
                        + " [^<]*</td>\\s*<td>" + of.get(Verdict.MET) + "(; [^<]*)?</td>.*"),
                        rule + " " + of);
            }
            if (of.containsKey(Verdict.NOT_APPLICABLE)) {
                assertTrue(after.contains(rule.getKey() + " (" + of.get(Verdict.NOT_APPLICABLE) + ")"), rule + " " + of);
            }
        }
        assertEquals(outcomes.stream().filter(outcome -> outcome.verdict() == Verdict.NOT_MET).count(),
                (design + data).split(": NOT MET \\(", -1).length - 1);
    }

    /** Design rules and rules about data add up to what the check counts, in the table of the report as well. */
    @Test
    void designAndDataRulesAreCountedApart() throws ReportException {
        for (String name : new String[] {"harrow-vale", "harrow-vale-faults", "every-family"}) {
            CheckResult result = Checks.run(Demo.project(name), Optional.empty());
            String text = Demo.text(Demo.html(Demo.project(name)));
            List<String> rows = new ArrayList<>();
            for (boolean aboutData : new boolean[] {false, true}) {
                List<Outcome> of = result.outcomes().stream()
                        .filter(outcome -> outcome.rule().matches("(DATA|REC)-.*") == aboutData).toList();
                rows.add((aboutData ? "rules about data and records " : "design rules ") + count(of, Verdict.NOT_MET) + " "
                        + count(of, Verdict.TO_CLEAR_UP) + " " + count(of, Verdict.MET) + " " + count(of, Verdict.NOT_APPLICABLE) + " ");
            }
            rows.forEach(row -> assertTrue(text.contains(row), row + " in " + text));
        }
    }

    private static long count(List<Outcome> outcomes, Verdict verdict) {
        return outcomes.stream().filter(outcome -> outcome.verdict() == verdict).count();
    }

    /** Without annexes the report says what it left out and still holds every finding, the verdict and the cautions. */
    @Test
    void withoutAnnexesNothingOpenIsLost() throws ReportException {
        Project project = Demo.project("harrow-vale-faults");
        String whole = Demo.text(Demo.html(project));
        String brief = Demo.text(new String(Reports.write(project, Optional.empty(), Demo.OPTIONS.withAnnexes(false), Reports.Format.HTML),
                StandardCharsets.UTF_8));
        assertTrue(brief.length() < whole.length());
        assertTrue(brief.contains("were left out of this copy"), brief);
        for (Outcome outcome : Checks.run(project, Optional.empty()).outcomes()) {
            if (outcome.verdict() == Verdict.NOT_MET || outcome.verdict() == Verdict.TO_CLEAR_UP) {
                assertTrue(brief.contains(outcome.explanation().english().replaceAll("\\s+", " ")), outcome.toString());
                outcome.citation().ifPresent(citation -> assertTrue(brief.contains(citation.text().english()), citation.text().english()));
            }
        }
        Cautions.in(Locale.ENGLISH).forEach(caution -> assertTrue(brief.contains(caution), caution));
        assertTrue(brief.contains("outcomes do not meet their rule"), brief);
    }

    /** The mast raised from 148.4 m to 400 m: the surface at 09 is broken now, and the history says what that did. */
    @Test
    void theHistorySaysWhatChangedInTheResults() throws ReportException {
        Project before = Demo.project("harrow-vale");
        Project after = Demo.project("harrow-vale");
        after.setRevision("B");
        after.getAerodrome().getObstacles().stream().filter(obstacle -> "Windle mast".equals(obstacle.getName())).findFirst()
                .orElseThrow().setTopElevationM(400.0);
        String text = Demo.text(new String(Reports.write(after, Optional.empty(), Demo.OPTIONS.since(before), Reports.Format.HTML),
                StandardCharsets.UTF_8));
        assertTrue(text.contains("Margin to the obstacle surface, m 8.654 -"), text);
        assertTrue(text.matches("(?s).*OBS-01 Obstacle surface [^.]*PAPI 09 met NOT MET \\(fail\\).*"), text);
        assertFalse(Demo.text(Demo.html(after)).contains("8.654 -"));
        assertTrue(Demo.text(Demo.html(after)).contains("No earlier version was given"), "said where there is none");
    }

    /**
     * The power line at 09, worked by hand from the report's own survey figures: its governing top 32.60 m above the threshold, 1341.53 m
     * before it; lens D 0.73 m above it, 330.46 m behind it: atan(31.87 / 1671.99) is 1 degree 5.5 minutes.
     */
    @Test
    void everyObstacleHasItsSightLine() throws ReportException {
        assertEquals(1 + 5.5 / 60, Math.toDegrees(Math.atan((32.60 - 0.73) / (1341.53 + 330.46))), 0.001);
        String text = Demo.text(Demo.html(Demo.project("harrow-vale")));
        assertTrue(text.contains("below from D at 1\u00b005.5', 1\u00b037.5' below the lowest on-slope signal"), text);
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
        return table.substring(0, table.indexOf("</table>")).split("Met: 0 not met, 0 to clear up", -1).length - 1;
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
        assertTrue(text.contains("Chosen: PAPI. It is "), text);
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

    /** Windle mast stands within the surface of PAPI 09 and governs nothing there. */
    @Test
    void theInspectorIsNotToldThatAnApproachIsClearOfWhatWasNotCompared() throws ReportException {
        Project project = Demo.project("harrow-vale");
        String open = "NOT KNOWN to be clear: it is not said how accurately Windle mast was surveyed";
        assertFalse(Demo.text(Demo.html(project)).contains(open));
        project.getAerodrome().getObstacles().stream().filter(obstacle -> "Windle mast".equals(obstacle.getName()))
                .forEach(obstacle -> obstacle.setVerticalAccuracyM(null));
        String text = Demo.text(Demo.html(project));
        assertTrue(text.contains(open), text);
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
            String name = MessageRenderer.of(Locale.ENGLISH).write(ValueNames.of(confirmation.getValueKey()));
            assertTrue(text.contains(name), name);
            assertFalse(text.contains(confirmation.getValueKey()), "a name and not the key " + confirmation.getValueKey());
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
