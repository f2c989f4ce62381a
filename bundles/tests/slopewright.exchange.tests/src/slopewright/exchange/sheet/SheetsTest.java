package slopewright.exchange.sheet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipFile;

import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;

import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

import slopewright.exchange.Demo;
import slopewright.model.Circuit;
import slopewright.model.LightUnit;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;

/** The schedules of the demo, read back from their files by other readers. */
class SheetsTest {

    @TempDir
    private Path folder;

    private static SettingOutSchedule settingOut(Project project) {
        return SettingOutSchedule.of(project, Demo.aids(project));
    }

    private static String cell(Sheet sheet, int row, String column) {
        return sheet.rows().get(row).get(sheet.columns().indexOf(column)).text();
    }

    private static double number(Sheet sheet, int row, String column) {
        return sheet.rows().get(row).get(sheet.columns().indexOf(column)).number().orElseThrow();
    }

    /** The oracle of the position is the geodesic from the threshold at 47.3 N 11.9 W along 92 degrees, as GeographicLib solves it. */
    @Test
    void settingOutHasEveryUnitAtItsPosition() {
        Sheet sheet = settingOut(Demo.project()).sheet();
        assertEquals(4 + 4 + 2 + 1, sheet.rows().size());
        double turn = Math.toDegrees(Math.atan2(-37.5, 330.462));
        GeodesicData unit = Geodesic.WGS84.Direct(47.3, -11.9, 92 + turn, Math.hypot(330.462, 37.5));
        assertEquals(unit.lat2, number(sheet, 0, "latitude deg"), 5e-10);
        assertEquals(unit.lon2, number(sheet, 0, "longitude deg"), 5e-10);
        assertEquals("-37.500", cell(sheet, 0, "offset m"));
        assertEquals("no grid", cell(sheet, 0, "east m"));
        assertEquals(578.217, number(sheet, 4, "chainage from runway extremity m"), 1e-9, "278.217 and 300 of displaced threshold");
        assertEquals("not applicable", cell(sheet, 10, "chainage from runway extremity m"));
    }

    /** Tangents of 3.583333 degrees from a pocket calculator: 0.0626226; 272 degrees with 4 degrees of westerly variation are 276. */
    @Test
    void settingOutTellsWhatAStaffAndAClinometerRead() {
        Sheet sheet = settingOut(Demo.project()).sheet();
        assertEquals("3°35'", cell(sheet, 0, "setting"));
        assertEquals("62.62", cell(sheet, 0, "gradient mm per m"));
        assertEquals("87.444", cell(sheet, 0, "staff level at 5 m"), "87.131 and 0.313");
        assertEquals("87.757", cell(sheet, 0, "staff level at 10 m"), "87.131 and 0.626");
        assertEquals("88.383", cell(sheet, 0, "staff level at 20 m"), "87.131 and 1.252");
        assertEquals("1.252", cell(sheet, 0, "above lens at 20 m"));
        assertEquals("86.531", cell(sheet, 0, "ground elevation m"), "87.131 less 0.6");
        assertEquals("272.000", cell(sheet, 0, "azimuth true deg"));
        assertEquals("276.000", cell(sheet, 0, "azimuth magnetic deg"));
        assertEquals("1.00", cell(sheet, 0, "setting tolerance min"));
        assertEquals("test [from-memory]", cell(sheet, 0, "tolerance source"));
    }

    /** On a local grid turned by 10 degrees, a beam toward 272 degrees true lies at 262 degrees of the grid. */
    @Test
    void settingOutOnALocalGrid() {
        Project project = Demo.project();
        project.getAerodrome().setCoordinateReference("local");
        project.getAerodrome().setGridRotationDeg(10.0);
        Projects.hosts(project).forEach(host -> {
            if (host instanceof RunwayEnd end) {
                end.getThreshold().setEastM(5000.0);
                end.getThreshold().setNorthM(7000.0);
            }
        });
        Sheet sheet = settingOut(project).sheet();
        assertEquals("262.000", cell(sheet, 0, "azimuth grid deg"));
        double along = Math.toRadians(92 - 10);
        assertEquals(5000 + 330.462 * Math.sin(along) - 37.5 * Math.cos(along), number(sheet, 0, "east m"), 0.0006);
        assertEquals(7000 + 330.462 * Math.cos(along) + 37.5 * Math.sin(along), number(sheet, 0, "north m"), 0.0006);
        assertEquals("not known", cell(sheet, 0, "latitude deg"));
    }

    @Test
    void whatIsNotKnownIsNotZero() {
        Project project = Demo.project();
        LightUnit unit = Projects.aids(project).get(0).getUnits().get(0);
        unit.setSettingDeg(null);
        unit.setHeightAboveGroundM(null);
        Sheet sheet = settingOut(project).sheet();
        for (String column : List.of("setting", "setting deg", "gradient mm per m", "staff level at 5 m", "ground elevation m")) {
            assertEquals("not known", cell(sheet, 0, column), column);
        }
    }

    /** 10 units of 3 lamps of 200 W are 6000 W; 6.6 A squared through 3.4 ohm/km over 2.5 km are 370.26 W; 55 Ah at 4.2 A last 13.095 h. */
    @Test
    void circuitsAddUp() {
        Project project = Demo.project();
        Circuit series = project.getAerodrome().getCircuits().get(0);
        Sheet bare = LoadSchedule.of(project).sheet();
        assertEquals("6000.0", cell(bare, 3, "lamps W"));
        assertEquals("not known", cell(bare, 3, "cable W"));
        assertEquals("not known", cell(bare, 3, "lamps and cable VA"));
        assertEquals("13.10", cell(bare, 5, "battery hours"));
        assertEquals("not applicable", cell(bare, 3, "battery hours"));
        series.setCableResistanceOhmPerKm(3.4);
        series.setCableLengthM(2500.0);
        series.setRegulatorRatingKva(7.5);
        Sheet sheet = LoadSchedule.of(project).sheet();
        assertEquals("370.3", cell(sheet, 3, "cable W"));
        assertEquals("6370.3", cell(sheet, 3, "lamps and cable VA"));
        assertEquals("84.9", cell(sheet, 3, "share of rating percent"));
        assertEquals("5", cell(sheet, 3, "brightness steps"));
        assertEquals("10", cell(sheet, 3, "units"));
    }

    @Test
    void aMissingLampMakesTheSumUnknown() {
        Project project = Demo.project();
        Projects.aids(project).get(2).getEquipment().setLampPowerW(null);
        Projects.aids(project).get(1).setEquipment(null);
        Sheet sheet = LoadSchedule.of(project).sheet();
        assertEquals("2400.0", cell(sheet, 0, "lamps W"));
        assertEquals("not known", cell(sheet, 1, "lamps a unit"));
        assertEquals("not known", cell(sheet, 2, "lamps W"));
        assertEquals("not known", cell(sheet, 3, "lamps W"));
        project.getAerodrome().getCircuits().get(1).setCurrentA(null);
        assertEquals("12.10", cell(LoadSchedule.of(project).sheet(), 5, "battery hours"), "55 Ah over 100 W at 22 V");
        project.getAerodrome().getCircuits().clear();
        assertEquals("no circuit", cell(LoadSchedule.of(project).sheet(), 0, "circuit"));
    }

    @Test
    void publishedDataNamesTheMehtWhereThereIsAThreshold() {
        Project project = Demo.project();
        PublishedData data = PublishedData.of(Demo.aids(project));
        assertEquals(4, data.aids().size());
        double eye = Demo.aids(project).get(0).siting().orElseThrow().eyeHeightM();
        assertEquals(eye, data.aids().get(0).mehtM(), 0.0);
        assertNull(data.aids().get(3).mehtM());
        Sheet sheet = data.sheet();
        assertEquals(eye, number(sheet, 0, "MEHT m"), 0.005);
        assertEquals(eye / 0.3048, number(sheet, 0, "MEHT ft"), 0.05);
        assertEquals("PAPI", cell(sheet, 0, "type"));
        assertEquals("left", cell(sheet, 0, "side"));
        assertEquals("300.0", cell(sheet, 1, "displacement of threshold m"));
        assertEquals("not applicable", cell(sheet, 3, "MEHT m"));
        assertFalse(cell(sheet, 3, "eye height m").startsWith("not"));
    }

    /** What a spreadsheet would run is text; what is a number stays one, a negative one too. */
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
            assertEquals(safe ? text : "'" + text, read.get(i + 1).get(0));
            assertEquals("-37.500", read.get(i + 1).get(1));
        }
        List<List<String>> book = workbook(SheetFile.xlsx(sheet));
        assertEquals("s:=text", book.get(0).get(0));
        for (int i = 0; i < hostile.size(); i++) {
            assertEquals("s:" + hostile.get(i).replace('\r', '\n'), book.get(i + 1).get(0).replace('\r', '\n'));
            assertEquals("n:-37.5", book.get(i + 1).get(1));
        }
    }

    /** Reads a workbook with the XML reader of the platform: s for text, n for a number, f for a formula. */
    private List<List<String>> workbook(byte[] bytes) throws IOException, ParserConfigurationException, SAXException {
        Path file = Files.write(folder.resolve("trial.xlsx"), bytes);
        List<List<String>> rows = new ArrayList<>();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            NodeList strings = parse(zip, "xl/sharedStrings.xml").getElementsByTagName("si");
            NodeList lines = parse(zip, "xl/worksheets/sheet1.xml").getElementsByTagName("row");
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
        for (Sheet sheet : List.of(settingOut(project).sheet(), LoadSchedule.of(project).sheet(), PublishedData.of(Demo.aids(project))
                .sheet())) {
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
