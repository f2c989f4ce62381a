package slopewright.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import slopewright.model.Project;
import slopewright.report.handover.Deliverables;
import slopewright.report.handover.HandoverFile;
import slopewright.report.handover.HandoverOptions;
import slopewright.report.handover.HandoverSource;

/** The set of all drawings: one document, a register, numbered sheets, text that is text. */
class DrawingSetTest {

    private static byte[] set;

    private static byte[] write(Locale language) throws ReportException {
        Project project = Demo.project("harrow-vale");
        HandoverFile file = Deliverables.of(project).stream().filter(found -> found.kind().equals("drawing-set")).findFirst().orElseThrow();
        return file.writer().write(new HandoverSource(project), new HandoverOptions(LocalDate.of(2026, 6, 1), PaperSize.A4, language));
    }

    @BeforeAll
    static void writeOnce() throws ReportException {
        set = write(Locale.ENGLISH);
    }

    private static String text(PDDocument document, int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(document).replaceAll("\\s+", " ");
    }

    /**
     * Four aids with eight views, the mounting and the sheet to set out from each, the light of the three that are rows, a diagram of each
     * of two circuits, and two sheets of register before them: 25 lines go on one of A4.
     */
    @Test
    void everySheetIsNumberedAndListed() throws IOException {
        try (PDDocument document = Loader.loadPDF(set)) {
            assertEquals(2 + 4 * 10 + 3 + 2, document.getNumberOfPages());
            String register = text(document, 1) + text(document, 2);
            int page = 1;
            for (var bookmark : document.getDocumentCatalog().getDocumentOutline().children()) {
                String text = text(document, page);
                assertTrue(text.contains("sheet " + page + " of 47"), text);
                assertTrue(page <= 2 || register.contains("sheet " + page + " of 47 " + bookmark.getTitle()), register);
                assertTrue(text.contains(bookmark.getTitle()), text);
                page++;
            }
            assertEquals(48, page);
        }
    }

    /** Of the planted faults each sheet and the register say as much as the first page of the report, and the register of all of them. */
    @Test
    void everySheetCarriesTheVerdictOfTheReport() throws ReportException, IOException {
        Project project = Demo.project("harrow-vale-faults");
        HandoverSource source = new HandoverSource(project);
        HandoverOptions options = new HandoverOptions(LocalDate.of(2026, 6, 1), PaperSize.A4, Locale.ENGLISH);
        String report = new String(written(project, source, options, "report", "html"), StandardCharsets.UTF_8);
        Map<String, String> verdicts = new HashMap<>();
        Matcher row = Pattern.compile("<p class=\"name\">[^<]*, ([^<,]+)</p><p>[^<]*</p>"
                + "<p>(Not met: [1-9]\\d* not met, \\d+ to clear up)</p>").matcher(report.replaceAll(">\\s+<", "><"));
        while (row.find()) {
            verdicts.put(row.group(1), row.group(2));
        }
        assertTrue(verdicts.keySet().containsAll(List.of("PAPI 09", "PAPI 27", "APAPI 03", "north pad")),
                verdicts.toString());
        Matcher whole = Pattern.compile("Not met: (\\d+) outcomes do not meet their rule, \\d+ of severity fail; (\\d+) more")
                .matcher(report);
        assertTrue(whole.find());
        String all = "Not met: " + whole.group(1) + " not met, " + whole.group(2) + " to clear up";
        try (PDDocument document = Loader.loadPDF(written(project, source, options, "drawing-set", "pdf"))) {
            int page = 0;
            for (var bookmark : document.getDocumentCatalog().getDocumentOutline().children()) {
                page++;
                String title = bookmark.getTitle();
                String text = text(document, page);
                String said = verdicts.entrySet().stream().filter(entry -> title.endsWith(entry.getKey())).map(Map.Entry::getValue)
                        .findFirst().orElse(page <= 2 ? all : "Not met: ");
                assertTrue(text.contains(said), title + ": " + said + " in " + text);
                assertTrue(page <= 2 || text(document, 1).concat(text(document, 2)).contains(title + " " + said), title + ": " + said);
            }
            assertTrue(page > 30);
        }
    }

    private static byte[] written(Project project, HandoverSource source, HandoverOptions options, String kind, String ending)
            throws ReportException {
        return Deliverables.of(project).stream().filter(found -> found.kind().equals(kind) && found.fileName().endsWith("." + ending))
                .findFirst().orElseThrow().writer().write(source, options);
    }

    /** The figures of the row at 09 as the report's calculation gives them, read as text; the face is embedded. */
    @Test
    void lettersAreText() throws IOException {
        try (PDDocument document = Loader.loadPDF(set)) {
            String layout = text(document, 3);
            assertTrue(layout.contains("330.46 m") && layout.contains("3\u00b035'"), layout);
            assertTrue(text(document, 4).contains("MEHT 16.41 m"), text(document, 4));
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    assertTrue(page.getResources().getFont(name).isEmbedded());
                }
            }
        }
    }

    /** The threshold of 09 as it was entered, unit D as the schedule has it; columns of the grid are empty without one. */
    @Test
    void theSheetToSetOutFromHoldsTheCoordinates() throws IOException {
        try (PDDocument document = Loader.loadPDF(set)) {
            String text = text(document, 14);
            assertTrue(text.contains("threshold 47\u00b018'00.000\" N 11\u00b054'00.000\" W - - 0.000 0.000 86.400"), text);
            assertTrue(text.contains(" - - 330.462 -37.500 87.131 3\u00b035'"), text);
        }
    }

    @Test
    void theSameProjectGivesTheSameBytesInEachLanguage() throws ReportException, IOException {
        assertArrayEquals(set, write(Locale.ENGLISH));
        try (PDDocument document = Loader.loadPDF(write(Locale.GERMAN))) {
            assertTrue(text(document, 1).contains("Blatt 1 von 47"), text(document, 1));
        }
    }
}
