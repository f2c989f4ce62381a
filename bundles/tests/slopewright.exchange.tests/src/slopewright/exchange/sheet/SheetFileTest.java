package slopewright.exchange.sheet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipFile;

import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

import slopewright.evaluation.MadeFrom;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.exchange.Demo;
import slopewright.exchange.circuit.LoadSchedule;
import slopewright.exchange.publish.PublishedData;
import slopewright.exchange.settingout.SettingOutSchedule;
import slopewright.model.Project;
import slopewright.model.io.Program;

/** Tables, read back from their files by other readers. */
class SheetFileTest {

    @TempDir
    private Path folder;

    /** What a spreadsheet would run is text, in one line; what is a number stays one, a negative one too. */
    @Test
    void noCellBecomesAFormula() throws IOException, ParserConfigurationException, SAXException {
        List<String> hostile = List.of("=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "  =1", "plain", "a,b\"c\nd", "=cmd|' /C calc'!A0");
        List<List<SheetCell>> rows = hostile.stream().map(text -> List.of(SheetCell.text(text), SheetCell.number(-37.5, 3))).toList();
        Sheet sheet = new Sheet("Trial", List.of("=text", "number"), rows, List.of("=note"));
        List<List<String>> read = new ArrayList<>();
        try (CsvReader<CsvRecord> csv = CsvReader.builder().ofCsvRecord(new String(SheetFile.csv(sheet), StandardCharsets.UTF_8))) {
            csv.forEach(row -> read.add(row.getFields()));
        }
        assertEquals("'=text", read.get(0).get(0));
        for (int i = 0; i < hostile.size(); i++) {
            String text = hostile.get(i);
            boolean safe = text.startsWith("plain") || text.startsWith("a,b");
            String line = text.replaceAll("[\t\r\n]", " ");
            assertEquals(safe ? line : "'" + line, read.get(i + 1).get(0));
            assertEquals("-37.500", read.get(i + 1).get(1));
        }
        List<List<String>> book = workbook(SheetFile.xlsx(sheet));
        assertEquals("s:=text", book.get(0).get(0));
        for (int i = 0; i < hostile.size(); i++) {
            assertEquals("s:" + hostile.get(i).replaceAll("[\t\r\n]", " "), book.get(i + 1).get(0));
            assertEquals("n:-37.5", book.get(i + 1).get(1));
        }
    }

    /**
     * Thirty numbers of ten digits and a sentence of 200 letters: a page of A3 on its side, 420 mm, holds about 300 letters of 8 points, so
     * it takes two, and the sentence has lines of its own instead of 200 letters of width.
     */
    @Test
    void aWideTableStaysLargeEnoughToBeRead() throws IOException, ParserConfigurationException, SAXException {
        List<String> columns = new ArrayList<>(List.of("name"));
        List<SheetCell> row = new ArrayList<>(List.of(SheetCell.text("five five ".repeat(20).strip())));
        for (int i = 0; i < 30; i++) {
            columns.add("number " + i);
            row.add(SheetCell.number(123456.789, 3));
        }
        Path file = Files.write(folder.resolve("wide.xlsx"), SheetFile.xlsx(new Sheet("Wide", columns, List.of(row), List.of())));
        try (ZipFile zip = new ZipFile(file.toFile())) {
            Element table = parse(zip, "xl/worksheets/sheet1.xml");
            Element setup = (Element) table.getElementsByTagName("pageSetup").item(0);
            assertEquals("2", setup.getAttribute("fitToWidth"));
            assertEquals("8", setup.getAttribute("paperSize"), "A3 in Office Open XML");
            assertTrue(Double.parseDouble(((Element) table.getElementsByTagName("col").item(0)).getAttribute("width")) < 60);
            assertTrue(Double.parseDouble(((Element) table.getElementsByTagName("row").item(1)).getAttribute("ht")) > 50, "five lines");
        }
    }

    /** On its side, one page wide, head repeated, origin in the head of the page; -37.500 shows its zeros. Read as XML. */
    @Test
    void aWorkbookPrints() throws IOException, ParserConfigurationException, SAXException {
        Sheet sheet = new Sheet("Trial & error", List.of("text", "number"), List.of(List.of(SheetCell.text("a"),
                SheetCell.number(-37.5, 3))), List.of()).from(MadeFrom.of(Demo.evaluate(Demo.project())));
        Path file = Files.write(folder.resolve("printed.xlsx"), SheetFile.xlsx(sheet));
        try (ZipFile zip = new ZipFile(file.toFile())) {
            Element setup = (Element) parse(zip, "xl/worksheets/sheet1.xml").getElementsByTagName("pageSetup").item(0);
            assertEquals("landscape", setup.getAttribute("orientation"));
            assertEquals("1", setup.getAttribute("fitToWidth"));
            assertEquals("0", setup.getAttribute("fitToHeight"));
            String head = parse(zip, "xl/worksheets/sheet1.xml").getElementsByTagName("oddHeader").item(0).getTextContent();
            assertTrue(head.contains("Trial && error") && head.contains("Harrow Vale, revision A, 2026-06-01"), head);
            Element format = (Element) parse(zip, "xl/styles.xml").getElementsByTagName("numFmt").item(0);
            assertEquals("0.000", format.getAttribute("formatCode"));
            String titles = parse(zip, "xl/workbook.xml").getElementsByTagName("definedName").item(0).getTextContent();
            assertTrue(titles.endsWith("$1:$1"), titles);
        }
        String notes = String.join(" ", workbook(SheetFile.xlsx(sheet), 2).stream().flatMap(List::stream).toList());
        assertTrue(notes.contains("SHA-256: ") && notes.contains("slopewright " + Program.VERSION) && notes.contains("icao:9th"), notes);
    }

    /** Reads a workbook with the XML reader of the platform: s for text, n for a number, f for a formula. */
    private List<List<String>> workbook(byte[] bytes) throws IOException, ParserConfigurationException, SAXException {
        return workbook(bytes, 1);
    }

    private List<List<String>> workbook(byte[] bytes, int number) throws IOException, ParserConfigurationException, SAXException {
        Path file = Files.write(folder.resolve("trial.xlsx"), bytes);
        List<List<String>> rows = new ArrayList<>();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            NodeList strings = parse(zip, "xl/sharedStrings.xml").getElementsByTagName("si");
            NodeList lines = parse(zip, "xl/worksheets/sheet" + number + ".xml").getElementsByTagName("row");
            for (int r = 0; r < lines.getLength(); r++) {
                List<String> row = new ArrayList<>();
                NodeList cells = ((Element) lines.item(r)).getElementsByTagName("c");
                for (int c = 0; c < cells.getLength(); c++) {
                    Element cell = (Element) cells.item(c);
                    assertEquals(0, cell.getElementsByTagName("f").getLength(), "a formula");
                    String value = cell.getTextContent();
                    row.add(cell.getAttribute("t").equals("s") ? "s:" + strings.item(Integer.parseInt(value)).getTextContent()
                            : "n:" + value);
                }
                rows.add(row);
            }
        }
        return rows;
    }

    private static Element parse(ZipFile zip, String name) throws IOException, ParserConfigurationException, SAXException {
        try (InputStream in = zip.getInputStream(zip.getEntry(name))) {
            return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(in).getDocumentElement();
        }
    }

    @Test
    void aWorkbookHoldsNumbersAndTheSameBytesAgain() throws IOException, ParserConfigurationException, SAXException {
        Project project = Demo.project();
        ProjectEvaluation evaluation = Demo.evaluate(project);
        for (Sheet sheet : List.of(SettingOutSchedule.of(evaluation, LocalDate.of(2026, 1, 1)).sheet(Demo.ENGLISH),
                LoadSchedule.of(project).sheet(Demo.ENGLISH),
                PublishedData.of(evaluation).sheet(Demo.ENGLISH))) {
            byte[] bytes = SheetFile.xlsx(sheet);
            assertArrayEquals(bytes, SheetFile.xlsx(sheet));
            List<List<String>> read = workbook(bytes);
            assertEquals(sheet.rows().size() + 1, read.size());
            for (int r = 0; r < sheet.rows().size(); r++) {
                for (int c = 0; c < sheet.columns().size(); c++) {
                    SheetCell cell = sheet.rows().get(r).get(c);
                    String found = read.get(r + 1).get(c);
                    if (cell.number().isPresent()) {
                        assertEquals(cell.number().getAsDouble(), Double.parseDouble(found.substring(2)), 1e-12);
                        assertTrue(found.startsWith("n:"), found);
                    } else {
                        assertEquals("s:" + cell.text(), found);
                    }
                }
            }
        }
    }
}
