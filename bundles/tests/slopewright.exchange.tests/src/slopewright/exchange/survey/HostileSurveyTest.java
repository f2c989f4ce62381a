package slopewright.exchange.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

import net.sf.geographiclib.Geodesic;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.evaluation.sweep.SweptEnd;
import slopewright.exchange.Demo;
import slopewright.exchange.ExchangeException;
import slopewright.model.Project;
import slopewright.siting.site.SurveyPoints;

/** What wants to break a reader, or to put something where it does not stand, ends with a reason in every format that it can come in. */
class HostileSurveyTest {

    private static final String LAUGHS = "<!DOCTYPE x [<!ENTITY a \"haha\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;\">"
            + "<!ENTITY c \"&b;&b;&b;&b;&b;&b;&b;&b;&b;&b;\"><!ENTITY d \"&c;&c;&c;&c;&c;&c;&c;&c;&c;&c;\">"
            + "<!ENTITY e \"&d;&d;&d;&d;&d;&d;&d;&d;&d;&d;\">]>";
    private static final String OUTSIDE = "<!DOCTYPE x [<!ENTITY e SYSTEM \"file:///etc/hostname\">]>";
    private static final String HEADER = "id,latitudeDeg,longitudeDeg,topElevationM\n";

    @TempDir
    private Path folder;

    private static SurveyOrigin origin() {
        return new SurveyOrigin("survey", Optional.empty(), Optional.empty(), OptionalDouble.of(1), OptionalDouble.of(1),
                SurveyHeights.AS_STATED);
    }

    private String refusal(Project project, Path file, SurveyReading.Form form) {
        ExchangeException fault = assertThrows(ExchangeException.class, () -> {
            SurveyReading reading = SurveyReading.of(project, file, origin(), Optional.empty(), form);
            reading.refuseFaults(true);
            throw new AssertionError("read: " + reading.count() + " " + reading.notes());
        });
        return fault.getMessage();
    }

    private Path xml(String ending, String type) throws IOException {
        return Files.writeString(folder.resolve("laughs." + ending), "<?xml version=\"1.0\"?>\n" + type + "<x>&e;</x>");
    }

    @ParameterizedTest
    @ValueSource(strings = {"kml", "xml"})
    void noEntityIsExpandedOrFetched(String ending) throws IOException {
        for (String type : new String[] {LAUGHS, OUTSIDE}) {
            String message = refusal(Demo.project(), xml(ending, type), SurveyReading.Form.OBSTACLES);
            assertTrue(message.contains("a document type is not accepted"), message);
        }
    }

    /** A sheet that would fill the memory. */
    @Test
    void noSheetSwells() throws IOException {
        Path bomb = folder.resolve("bomb.xlsx");
        try (OutputStream file = Files.newOutputStream(bomb); ZipOutputStream zip = new ZipOutputStream(file)) {
            zip.putNextEntry(new ZipEntry("xl/worksheets/sheet1.xml"));
            byte[] zeros = new byte[1 << 20];
            for (int i = 0; i < 200; i++) {
                zip.write(zeros);
            }
        }
        assertTrue(Files.size(bomb) < 1 << 20, "it is small as it lies there");
        String message = refusal(Demo.project(), bomb, SurveyReading.Form.OBSTACLES);
        assertTrue(message.contains("holds more than 128 MB"), message);
    }

    /** Latitude and longitude that were exchanged, in every format that writes two bare numbers, as obstacles and as a block. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"s.csv | id,latitudeDeg,longitudeDeg,topElevationM~a,-11.9,47.3,90",
        "s.geojson | {\"type\":\"FeatureCollection\",\"features\":[{\"type\":\"Feature\",\"geometry\":{\"type\":\"Point\",\"coordinates\":"
                + "[47.3,-11.9,90]},\"properties\":{}}]}",
        "s.kml | <kml><Placemark><Point><altitudeMode>absolute</altitudeMode><coordinates>47.3,-11.9,90</coordinates></Point></Placemark>"
                + "</kml>"})
    void exchangedAxesAreNoticed(String name, String text) throws IOException {
        Path file = Files.writeString(folder.resolve(name), text.replace('~', '\n') + "\n");
        for (SurveyReading.Form form : new SurveyReading.Form[] {SurveyReading.Form.OBSTACLES, SurveyReading.Form.BLOCK}) {
            String message = refusal(Demo.project(), file, form);
            assertTrue(message.contains("are its coordinates in the right order"), message);
        }
    }

    /** Feet in a column that is not named as metres are no elevation; 30,000 of them in one that is are higher than any place. */
    @Test
    void feetAreNotTakenForMetres() throws IOException {
        Path named = Files.writeString(folder.resolve("feet.csv"), "id,latitudeDeg,longitudeDeg,topElevationFt\na,47.3,-11.9,295\n");
        assertTrue(refusal(Demo.project(), named, SurveyReading.Form.BLOCK).contains("has no elevation of its top"));
        Path mixed = Files.writeString(folder.resolve("mixed.csv"), HEADER + "a,47.3,-11.9,90\nb,47.3,-11.9,30000\n");
        SurveyReading reading = assertRead(mixed);
        assertEquals(1, reading.refusedCount());
        assertTrue(reading.refused().get(0).english().contains(":3: 'b' stands at an elevation of 30000 m"),
                reading.refused().toString());
    }

    /** A unit that stands in a column or property of its own counts, in every form in which it can stand there. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"s.csv | id,latitudeDeg,longitudeDeg,topElevationM,UOM~a,47.3,-11.9,90,%s",
        "s.geojson | {\"type\":\"FeatureCollection\",\"features\":[{\"type\":\"Feature\",\"geometry\":{\"type\":\"Point\",\"coordinates\":"
                + "[-11.9,47.3]},\"properties\":{\"id\":\"a\",\"topElevationM\":90,\"unit\":\"%s\"}}]}",
        "s.kml | <kml><Placemark><ExtendedData><Data name=\"topElevationM\"><value>90</value></Data><Data name=\"unit\"><value>%s</value>"
                + "</Data></ExtendedData><Point><coordinates>-11.9,47.3</coordinates></Point></Placemark></kml>"})
    void aUnitOfItsOwnCounts(String name, String text) throws IOException {
        Path feet = Files.writeString(folder.resolve(name), String.format(text, "ft").replace('~', '\n') + "\n");
        for (SurveyReading.Form form : new SurveyReading.Form[] {SurveyReading.Form.OBSTACLES, SurveyReading.Form.BLOCK}) {
            String message = refusal(Demo.project(), feet, form);
            assertTrue(message.contains("said to be in 'ft'"), message);
        }
        SurveyReading metres = assertRead(Files.writeString(folder.resolve(name), String.format(text, "m").replace('~', '\n') + "\n"));
        assertEquals(0, metres.refusedCount());
        assertEquals(1, metres.count());
    }

    /** A book of three sheets: obstacles, a remark, and further obstacles or another remark. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aFurtherSheetOfASpreadsheetIsNotLostInSilence(boolean places) throws IOException {
        String sheets = "";
        String targets = "";
        Path file = folder.resolve("book.xlsx");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            for (int i = 1; i <= 3; i++) {
                sheets += "<sheet name=\"Sheet " + i + "\" sheetId=\"" + i + "\" r:id=\"r" + i + "\"/>";
                targets += "<Relationship Id=\"r" + i + "\" Target=\"worksheets/sheet" + i + ".xml\"/>";
                put(zip, "xl/worksheets/sheet" + i + ".xml", "<worksheet><sheetData>" + (i == 2 || i == 3 && !places ? row("seen by", "me")
                        : row("id", "latitudeDeg", "longitudeDeg", "topElevationM") + row("a" + i, "47.3", "-11.9", "90"))
                        + "</sheetData></worksheet>");
            }
            put(zip, "xl/workbook.xml", "<workbook xmlns:r=\"http://r\"><sheets>" + sheets + "</sheets></workbook>");
            put(zip, "xl/_rels/workbook.xml.rels", "<Relationships>" + targets + "</Relationships>");
        }
        if (places) {
            String message = refusal(Demo.project(), file, SurveyReading.Form.OBSTACLES);
            assertTrue(message.contains("the sheet 'Sheet 3' has places too"), message);
        } else {
            assertTrue(Surveys.english(assertRead(file).notes()).contains("1 sheet 'Sheet 3' skipped"));
        }
    }

    private static String row(String... fields) {
        return "<row>" + Arrays.stream(fields).map(field -> "<c t=\"inlineStr\"><is><t>" + field + "</t></is></c>")
                .collect(Collectors.joining()) + "</row>";
    }

    private static void put(ZipOutputStream zip, String name, String text) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(text.getBytes(StandardCharsets.UTF_8));
    }

    private SurveyReading assertRead(Path file) {
        try {
            return SurveyReading.of(Demo.project(), file, origin(), Optional.empty(), SurveyReading.Form.BLOCK);
        } catch (ExchangeException e) {
            throw new AssertionError(e);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"NaN", "Infinity", "-Infinity", "1e999", "0x1p3", "1_000", "٣"})
    void whatIsNoNumberIsNoPlace(String number) throws IOException {
        for (String row : new String[] {number + ",-11.9,90", "47.3," + number + ",90", "47.3,-11.9," + number}) {
            Path file = Files.writeString(folder.resolve("n.csv"), HEADER + "a," + row + "\n");
            assertTrue(refusal(Demo.project(), file, SurveyReading.Form.BLOCK).contains("n.csv:2: "), row);
        }
    }

    /** On both sides of the antimeridian: near is near, and each point stands where the geodesic says (GeographicLib). */
    @Test
    void theAntimeridianIsNoWall() throws Exception {
        SweptEnd end = new SweptEnd("E", "", -17, 179.95, 90, 10, "sea");
        Path file = Files.writeString(folder.resolve("date-line.csv"), HEADER + "west,-17.01,179.9,30\neast,-16.99,-179.95,40\n");
        SurveyPoints points = SurveyReading.of(end.project(), file, origin(), Optional.empty(), SurveyReading.Form.BLOCK).points()
                .orElseThrow();
        assertEquals(2, points.count());
        SurveyPoints.InFrame places = points.toFrame(end.frame());
        for (int i = 0; i < 2; i++) {
            assertEquals(Geodesic.WGS84.Inverse(-17, 179.95, points.north()[i], points.east()[i]).s12,
                    Math.hypot(places.alongM()[i], places.rightM()[i]), 1e-6);
        }
        assertTrue(places.alongM()[1] > 10_000 && places.alongM()[0] < -5000, "landing to the east, the second lies ahead");
        Path far = Files.writeString(folder.resolve("far.csv"), HEADER + "a,-17,178,30\n");
        assertTrue(refusal(end.project(), far, SurveyReading.Form.BLOCK).contains("km from the aerodrome"));
    }

    /** Beside a pole every longitude is near; what is said of a place holds there too, and beyond the pole there is none. */
    @ParameterizedTest
    @ValueSource(ints = {1, -1})
    void atThePoleAPlaceIsWhereItIs(int pole) throws Exception {
        SweptEnd end = new SweptEnd("E", "", pole * 89.99, 20, 0, 10, "sea");
        Path file = Files.writeString(folder.resolve("pole.csv"), HEADER + "across," + pole * 89.99 + ",-160,30\n");
        SurveyPoints points = SurveyReading.of(end.project(), file, origin(), Optional.empty(), SurveyReading.Form.BLOCK).points()
                .orElseThrow();
        SurveyPoints.InFrame places = points.toFrame(end.frame());
        assertEquals(Geodesic.WGS84.Inverse(pole * 89.99, 20, pole * 89.99, -160).s12, Math.hypot(places.alongM()[0], places.rightM()[0]),
                1e-6);
        assertEquals(20, places.heightM()[0], 1e-9);
        Path beyond = Files.writeString(folder.resolve("beyond.csv"), HEADER + "a," + pole * 90.01 + ",20,30\n");
        assertTrue(refusal(end.project(), beyond, SurveyReading.Form.BLOCK).contains("out of range"));
    }
}
