package slopewright.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.LocalDate;
import java.util.Locale;

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
     * Four aids with eight views and the sheet to set out from each, a diagram of each of two circuits, and two sheets of register before
     * them: 25 lines go on one of A4.
     */
    @Test
    void everySheetIsNumberedAndListed() throws IOException {
        try (PDDocument document = Loader.loadPDF(set)) {
            assertEquals(2 + 4 * 9 + 2, document.getNumberOfPages());
            String register = text(document, 1) + text(document, 2);
            int page = 1;
            for (var bookmark : document.getDocumentCatalog().getDocumentOutline().children()) {
                String text = text(document, page);
                assertTrue(text.contains("sheet " + page + " of 40"), text);
                assertTrue(page <= 2 || register.contains("sheet " + page + " of 40 " + bookmark.getTitle()), register);
                assertTrue(text.contains(bookmark.getTitle()), text);
                page++;
            }
            assertEquals(41, page);
        }
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
            String text = text(document, 12);
            assertTrue(text.contains("threshold 47\u00b018'00.000\" N 11\u00b054'00.000\" W - - 0.000 0.000 86.400"), text);
            assertTrue(text.contains(" - - 330.462 -37.500 87.131 3\u00b035'"), text);
        }
    }

    @Test
    void theSameProjectGivesTheSameBytesInEachLanguage() throws ReportException, IOException {
        assertArrayEquals(set, write(Locale.ENGLISH));
        try (PDDocument document = Loader.loadPDF(write(Locale.GERMAN))) {
            assertTrue(text(document, 1).contains("Blatt 1 von 40"), text(document, 1));
        }
    }
}
