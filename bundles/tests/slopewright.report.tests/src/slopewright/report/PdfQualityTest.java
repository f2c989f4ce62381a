package slopewright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Calendar;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import slopewright.model.io.Program;
import slopewright.testkit.DemoProjects;

/** The file form of a report: for archives, for readers of the screen, for the printer. */
class PdfQualityTest {

    private static byte[] pdf;

    @BeforeAll
    static void write() throws ReportException {
        pdf = Reports.write(Demo.project("harrow-vale"), Optional.empty(), Demo.OPTIONS, Reports.Format.PDF);
    }

    @Test
    void everyFaceIsEmbedded() throws IOException {
        Set<String> faces = new HashSet<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertTrue(font.isEmbedded(), font.getName());
                    faces.add(font.getName().replaceFirst("^[A-Z]{6}\\+", ""));
                }
            }
        }
        assertEquals(Set.of("LiberationSans", "LiberationSans-Bold"), faces);
    }

    @Test
    void theFileIsTaggedAndNamesItsConformance() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertNotNull(document.getDocumentCatalog().getStructureTreeRoot());
            assertTrue(document.getDocumentCatalog().getMarkInfo().isMarked());
            assertEquals("en", document.getDocumentCatalog().getLanguage());
            assertTrue(document.getDocumentCatalog().getViewerPreferences().displayDocTitle());
            String metadata = new String(document.getDocumentCatalog().getMetadata().toByteArray(), StandardCharsets.UTF_8);
            assertTrue(metadata.contains("pdfaid:part") && metadata.contains("pdfuaid:part"), metadata);
            assertEquals("Harrow Vale: visual approach slope indicators", document.getDocumentInformation().getTitle());
        }
    }

    @Test
    void theFileBearsTheDateOfTheReportAndNotOfTheClock() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            Calendar day = document.getDocumentInformation().getCreationDate();
            assertEquals("2026-06-01", String.format("%tF", day));
            String metadata = new String(document.getDocumentCatalog().getMetadata().toByteArray(), StandardCharsets.UTF_8);
            String today = String.format("%tF", Calendar.getInstance());
            assertFalse(metadata.contains(today), metadata);
        }
    }

    /** Running lines on all pages but the cover, pages on their side for the matrix, bookmarks for chapters and sections. */
    @Test
    void pagesAreNumberedListedAndBookmarked() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            int pages = document.getNumberOfPages();
            for (int page = 1; page <= pages; page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                String text = stripper.getText(document);
                assertEquals(page > 1, text.contains("Page " + page + " of " + pages), text);
                assertEquals(page > 1, text.contains("Harrow Vale: visual approach slope indicators"), text);
                PDRectangle size = document.getPage(page - 1).getMediaBox();
                assertTrue(size.getWidth() < size.getHeight(), "every page stands upright");
            }
            assertTrue(pages <= 24, "four indicators in " + pages + " pages");
            int chapters = 0;
            int sections = 0;
            for (var item : document.getDocumentCatalog().getDocumentOutline().children()) {
                chapters++;
                assertTrue(item.getTitle().startsWith(chapters + "  "), item.getTitle());
                for (var part : item.children()) {
                    sections++;
                    assertTrue(part.getTitle().startsWith(chapters + "."), part.getTitle());
                }
            }
            assertEquals(14, chapters);
            assertTrue(sections > 40, String.valueOf(sections));
        }
    }

    /**
     * What an inspector decides on stands on the first page: verdict, each indicator, the state of the project that it was made from. The
     * figures are those of the calculation that ReportsTest works out; the hash is that of sha256sum.
     */
    @Test
    void theFirstPageIsEnoughToDecide() throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setEndPage(1);
            String text = stripper.getText(document);
            for (String expected : List.of("PAPI 09", "PAPI 27", "APAPI 03", "Portable unit", "330.46 m", "MEHT 16.41 m", "D 3\u00b035'",
                    "Met: 0 not met, 0", "9.81 m", "Prepared by", "Caution", "slopewright " + Program.VERSION)) {
                assertTrue(text.contains(expected), expected + " in " + text);
            }
            Process sum = new ProcessBuilder("sha256sum", DemoProjects.file("harrow-vale").toString()).start();
            try (InputStream said = sum.getInputStream()) {
                String digits = new String(said.readAllBytes(), StandardCharsets.UTF_8).substring(0, 12);
                assertTrue(text.contains(digits), digits + " in " + text);
            }
        }
    }

    /** The threshold of 09 lies at 47.3 north, 11.9 west; unit D 330.462 m on from it and 37.5 m to the left, as the schedule has it. */
    @Test
    void everyPlaceStandsThereAsCoordinates() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("threshold 47\u00b018'00.000\" N 11\u00b054'00.000\" W 0.000 0.000 0.00 86.400"), text);
            assertTrue(text.contains(" 330.462 -37.500 0.73 87.131 3\u00b035' 3.5833"), text);
        }
    }

    @Test
    void letterPaperIsAsLargeAsLetterPaper() throws ReportException, IOException {
        byte[] letter = Reports.write(Demo.project("harrow-vale"), Optional.empty(), new ReportOptions("2026-06-01", PaperSize.LETTER),
                Reports.Format.PDF);
        try (PDDocument document = Loader.loadPDF(letter)) {
            assertEquals(612, document.getPage(0).getMediaBox().getWidth(), 0.5);
            assertEquals(792, document.getPage(0).getMediaBox().getHeight(), 0.5);
        }
    }

    /** Nothing is printed into the margins: the outermost 6 mm of every page stay white. */
    @Test
    void nothingRunsOffThePage() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFRenderer renderer = new PDFRenderer(document);
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                BufferedImage image = renderer.renderImageWithDPI(page, 36);
                int edge = (int) Math.floor(6 / 25.4 * 36);
                for (int x = 0; x < image.getWidth(); x++) {
                    for (int y = 0; y < image.getHeight(); y++) {
                        boolean margin = x < edge || y < edge || x >= image.getWidth() - edge || y >= image.getHeight() - edge;
                        if (margin) {
                            assertEquals(0xFFFFFF, image.getRGB(x, y) & 0xFFFFFF, "page " + (page + 1) + " at " + x + ", " + y);
                        }
                    }
                }
            }
        }
    }
}
