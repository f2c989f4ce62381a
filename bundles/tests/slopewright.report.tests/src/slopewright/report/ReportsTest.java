package slopewright.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.xml.sax.SAXException;

import slopewright.checks.Checks;
import slopewright.checks.Outcome;
import slopewright.drawing.DrawnAid;
import slopewright.drawing.PlanScene;
import slopewright.drawing.Scene;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;
import slopewright.model.util.Projects;
import slopewright.siting.aid.AidLayouts;
import slopewright.standards.RuleSets;

/** Reports and drawings as files. */
class ReportsTest {

    private static final ReportOptions OPTIONS = new ReportOptions("2026-06-01");

    @TempDir
    private Path folder;

    private static Project demo(String name) {
        try {
            return ProjectFile.load(Path.of(System.getProperty("slopewright.root"), "demo-data", name, name + ".slopewright"));
        } catch (ProjectFileException e) {
            throw new AssertionError(e);
        }
    }

    private static String html(String name) throws ReportException {
        return new String(Reports.write(demo(name), Optional.empty(), OPTIONS, Reports.Format.HTML), StandardCharsets.UTF_8);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }

    @Test
    void theReportPrintsEveryOutcomeWithItsSource() throws ReportException {
        for (String name : new String[] {"harrow-vale", "harrow-vale-faults"}) {
            String html = html(name);
            for (Outcome outcome : Checks.run(demo(name), Optional.empty()).outcomes()) {
                assertTrue(html.contains(escaped(outcome.explanation())), outcome.toString());
                outcome.citation().ifPresent(citation -> assertTrue(html.contains(escaped(citation.text())), citation.toString()));
            }
        }
    }

    @Test
    void theReportCarriesCautionsRuleSetDataAndMeht() throws ReportException {
        String html = html("harrow-vale");
        Cautions.TEXT.forEach(text -> assertTrue(html.contains(escaped(text)), text));
        assertTrue(html.contains("Spain RD 862/2009 transposing Annex 14 Vol I 5th ed."));
        assertTrue(html.contains("Eye height over threshold (MEHT)"));
        assertTrue(html.contains("Data to be published for the aerodrome"));
        assertTrue(html.contains("Circuits and loads"));
        assertTrue(html.contains("no document was compared"));
        assertTrue(html.contains("2026-06-01"));
    }

    @Test
    void theReportIsWellFormedAndHoldsItsDrawings()
            throws ReportException, ParserConfigurationException, IOException, SAXException {
        String html = html("harrow-vale");
        DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new ByteArrayInputStream(html.replace("<!DOCTYPE html>\n", "").getBytes(StandardCharsets.UTF_8)));
        assertEquals(4 * 4, html.split("<svg ", -1).length - 1);
    }

    @Test
    void thePdfSaysWhatTheReportSaysInTheSameBytes() throws ReportException, IOException {
        byte[] first = Reports.write(demo("harrow-vale"), Optional.empty(), OPTIONS, Reports.Format.PDF);
        assertArrayEquals(first, Reports.write(demo("harrow-vale"), Optional.empty(), OPTIONS, Reports.Format.PDF));
        try (PDDocument document = Loader.loadPDF(first)) {
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("Visual approach slope indicators"), text);
            assertTrue(text.contains("330.46"));
            assertTrue(text.contains("3°35'"));
            assertTrue(text.contains("Page 1 of " + document.getNumberOfPages()));
            assertTrue(document.getNumberOfPages() > 8);
        }
    }

    @Test
    void anUnknownRuleSetIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> Reports.write(demo("harrow-vale"), Optional.of("moon"), OPTIONS,
                Reports.Format.HTML));
    }

    @Test
    void drawingsComeInFourForms() throws ReportException, IOException {
        ApproachAid aid = Projects.aids(demo("harrow-vale")).get(0);
        Scene scene = PlanScene.layout(DrawnAid.of(aid, AidLayouts.asLaid(aid, RuleSets.find("icao").orElseThrow())));
        for (Drawings.Format format : Drawings.Format.values()) {
            assertArrayEquals(Drawings.write(scene, format), Drawings.write(scene, format), format.name());
        }
        assertTrue(new String(Drawings.write(scene, Drawings.Format.SVG), StandardCharsets.UTF_8).startsWith("<svg "));
        assertTrue(new String(Drawings.write(scene, Drawings.Format.DXF), StandardCharsets.UTF_8).endsWith("EOF\n"));
        assertEquals(277 * 8, ImageIO.read(new ByteArrayInputStream(Drawings.write(scene, Drawings.Format.PNG))).getWidth());
        try (PDDocument document = Loader.loadPDF(Drawings.write(scene, Drawings.Format.PDF))) {
            assertEquals(1, document.getNumberOfPages());
        }
    }

    @Test
    void aFileIsWrittenWholeOrNotAtAll() throws ReportException, IOException {
        Path file = folder.resolve("a.txt");
        OutputFile.write(file, new byte[] {1, 2});
        OutputFile.write(file, new byte[] {3});
        assertArrayEquals(new byte[] {3}, Files.readAllBytes(file));
        Path nowhere = folder.resolve("none").resolve("b.txt");
        ReportException thrown = assertThrows(ReportException.class, () -> OutputFile.write(nowhere, new byte[1]));
        assertTrue(thrown.getMessage().contains("b.txt"), thrown.getMessage());
        assertFalse(Files.exists(nowhere.getParent()));
        assertEquals(1, folder.toFile().list().length);
    }
}
