package slopewright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.util.Projects;

/** How long a report is, and that its length is not had by small letters or empty pages. */
class ReportLengthTest {

    private static final double LEAST_TABLE_PT = 8;
    private static final double LEAST_TEXT_PT = 9;

    private static byte[] pdf(Project project, ReportOptions options) throws ReportException {
        return Reports.write(project, Optional.empty(), options, Reports.Format.PDF);
    }

    private static int pages(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages();
        }
    }

    /** Four indicators, and all families with two more. */
    @ParameterizedTest
    @CsvSource({"harrow-vale, en, 24", "harrow-vale, de, 24", "every-family, en, 60", "every-family, de, 60"})
    void aReportIsNoLongerThanItHasToBe(String demo, Locale language, int most) throws ReportException, IOException {
        byte[] pdf = pdf(Demo.project(demo), Demo.OPTIONS.in(language));
        assertTrue(pages(pdf) <= most, demo + " has " + pages(pdf) + " pages");
        assertTrue(pages(pdf(Demo.project(demo), Demo.OPTIONS.in(language).withAnnexes(false))) < pages(pdf));
    }

    /** However much is wrong with an indicator: its chapter takes four pages at most, from its heading to the page of the next. */
    @ParameterizedTest
    @CsvSource({"harrow-vale, en", "harrow-vale, de", "harrow-vale-faults, en", "harrow-vale-faults, de", "every-family, en",
        "every-family, de"})
    void noIndicatorTakesMoreThanFourPages(String demo, Locale language) throws ReportException, IOException {
        Project project = Demo.project(demo);
        Map<String, Double> taken = new LinkedHashMap<>();
        try (PDDocument document = Loader.loadPDF(pdf(project, Demo.OPTIONS.in(language)))) {
            PDOutlineItem chapter = document.getDocumentCatalog().getDocumentOutline().getFirstChild();
            while (chapter.getNextSibling() != null) {
                taken.put(chapter.getTitle(), place(document, chapter.getNextSibling()) - place(document, chapter));
                chapter = chapter.getNextSibling();
            }
        }
        taken.keySet().removeIf(title -> Projects.aids(project).stream().noneMatch(aid -> title.endsWith(", " + aid.getName())));
        assertEquals(Projects.aids(project).size(), taken.size(), taken.toString());
        assertTrue(taken.values().stream().allMatch(pages -> pages > 0.2 && pages <= 4), taken.toString());
    }

    /** Returns where a chapter begins, in pages from the beginning of the document. */
    private static double place(PDDocument document, PDOutlineItem chapter) throws IOException {
        PDPage page = chapter.findDestinationPage(document);
        PDPageXYZDestination top = (PDPageXYZDestination) chapter.getDestination();
        return document.getPages().indexOf(page) + 1 - top.getTop() / (double) page.getMediaBox().getHeight();
    }

    @Test
    void aProjectOfOneIndicatorTakesTwelvePages() throws ReportException, IOException {
        Project project = Demo.project("harrow-vale");
        List<ApproachAid> others = new ArrayList<>(Projects.aids(project));
        others.remove(0);
        others.forEach(aid -> Projects.host(aid).orElseThrow().getAids().remove(aid));
        project.getReadBacks().clear();
        project.getConfirmations().removeIf(confirmation -> !confirmation.getRuleSetKey().startsWith("icao"));
        project.getAerodrome().getHelipads().clear();
        project.getAerodrome().getRunways().remove(1);
        assertEquals(1, Projects.aids(project).size());
        int pages = pages(pdf(project, Demo.OPTIONS));
        assertTrue(pages <= 12, pages + " pages");
    }

    /** Letters of text and of tables as the printer sets them; those of drawings are told by their sheets. */
    @Test
    void nothingIsPrintedSmallerThanItMayBe() throws ReportException, IOException {
        List<String> small = new ArrayList<>();
        List<String> running = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf(Demo.project("harrow-vale-faults"), Demo.OPTIONS))) {
            new PDFTextStripper() {
                @Override
                protected void writeString(String text, List<TextPosition> places) throws IOException {
                    double size = places.stream().mapToDouble(TextPosition::getYScale).min().orElse(LEAST_TEXT_PT);
                    if (size < LEAST_TABLE_PT - 0.02) {
                        small.add(size + " " + text);
                    }
                    if (size < LEAST_TEXT_PT - 0.02 && text.split(" ").length > 25) {
                        running.add(size + " " + text);
                    }
                }
            }.getText(document);
        }
        assertEquals(List.of(), small);
        assertEquals(List.of(), running, "a line as long as that is text and no cell of a table");
    }

    /** Every page but the last is used at least to its middle. */
    @ParameterizedTest
    @CsvSource({"harrow-vale, en", "every-family, en", "harrow-vale-faults, en", "harrow-vale, de", "every-family, de",
        "harrow-vale-faults, de"})
    void noPageIsNearlyEmpty(String demo, Locale language) throws ReportException, IOException {
        try (PDDocument document = Loader.loadPDF(pdf(Demo.project(demo), Demo.OPTIONS.in(language)))) {
            PDFRenderer renderer = new PDFRenderer(document);
            for (int page = 1; page < document.getNumberOfPages() - 1; page++) {
                BufferedImage image = renderer.renderImageWithDPI(page, 24);
                int lowest = 0;
                for (int y = 0; y < image.getHeight() * 0.93; y++) {
                    for (int x = 0; x < image.getWidth(); x++) {
                        if ((image.getRGB(x, y) & 0xFF) < 0xD0) {
                            lowest = y;
                        }
                    }
                }
                assertTrue(lowest > image.getHeight() / 2, demo + ", page " + (page + 1)
                        + " ends at " + lowest + " of " + image.getHeight());
            }
        }
    }
}
