package slopewright.exchange.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import net.sf.geographiclib.Geodesic;
import slopewright.exchange.Demo;
import slopewright.exchange.ExchangeException;
import slopewright.model.Obstacle;
import slopewright.model.Place;
import slopewright.model.Project;

/** ESRI shapefiles. Those of the demo were written by GDAL; what they must give is what the CSV beside them gives. */
class ShapefileTest {

    private static final Path SURVEY = Path.of(System.getProperty("slopewright.root"), "demo-data", "harrow-vale", "survey");
    private static final int HEAD = 100;
    private static final int RECORD = HEAD + 8;

    @TempDir
    private Path folder;
    private Path copy;

    @BeforeEach
    void copyThePoints() throws IOException {
        copy = folder.resolve("points.shp");
        try (Stream<Path> files = Files.list(SURVEY.resolve("shapefile"))) {
            for (Path file : files.filter(path -> path.getFileName().toString().startsWith("obstacles-points.")).toList()) {
                Files.copy(file, folder.resolve(file.getFileName().toString().replace("obstacles-", "")));
            }
        }
    }

    private static SurveyOrigin origin(String grid) {
        return new SurveyOrigin("field book 7", Optional.of("2026-05-20"), Optional.ofNullable(grid), OptionalDouble.empty(),
                OptionalDouble.empty(), SurveyHeights.AS_STATED);
    }

    private static List<Obstacle> obstacles(String grid, Path... files) throws ExchangeException {
        Project project = Demo.project();
        int before = project.getAerodrome().getObstacles().size();
        for (Path file : files) {
            Surveys.obstacles(project, file, origin(grid));
        }
        List<Obstacle> all = project.getAerodrome().getObstacles();
        return all.subList(before, all.size());
    }

    private static List<SurveyShape> shapes(Path file) throws ExchangeException {
        List<SurveyShape> found = new ArrayList<>();
        SurveyFile.read(file, found::add);
        return found;
    }

    private static String refusal(Path file) {
        return assertThrows(ExchangeException.class, () -> shapes(file)).getMessage();
    }

    private void assertSame(Obstacle expected, Obstacle found) {
        assertEquals(expected.getId(), found.getId());
        assertEquals(expected.getName(), found.getName());
        assertEquals(expected.getKind(), found.getKind());
        assertEquals(expected.getTopElevationM(), found.getTopElevationM());
        assertEquals(expected.getHorizontalAccuracyM(), found.getHorizontalAccuracyM());
        assertEquals(expected.getVerticalAccuracyM(), found.getVerticalAccuracyM());
        assertEquals(expected.getPlaces().size(), found.getPlaces().size());
        for (Place place : expected.getPlaces()) {
            assertTrue(found.getPlaces().stream().anyMatch(there -> Geodesic.WGS84.Inverse(place.getLatitudeDeg(), place.getLongitudeDeg(),
                    there.getLatitudeDeg(), there.getLongitudeDeg()).s12 < 0.001
                    && (place.getElevationM() == null || place.getElevationM().equals(there.getElevationM()))), found.getName());
        }
    }

    @Test
    void pointsLinesAndAreasAreThoseOfTheCsv() throws ExchangeException {
        Path shapefile = SURVEY.resolve("shapefile");
        List<Obstacle> found = obstacles(null, shapefile.resolve("obstacles-points.shp"), shapefile.resolve("obstacles-areas.shp"),
                shapefile.resolve("obstacles-lines.shp"));
        List<Obstacle> expected = obstacles(null, SURVEY.resolve("obstacles.geojson"));
        assertEquals(4, found.size());
        for (int i = 0; i < 4; i++) {
            assertSame(expected.get(i), found.get(i));
        }
    }

    @Test
    void aGridIsNamedByWhoeverImports() throws ExchangeException {
        Path file = SURVEY.resolve("shapefile").resolve("points-utm29.shp");
        List<Obstacle> expected = obstacles(null, SURVEY.resolve("obstacles.geojson"));
        List<Obstacle> found = obstacles("EPSG:32629", file);
        assertEquals(2, found.size());
        assertSame(expected.get(0), found.get(0));
        assertSame(expected.get(1), found.get(1));
        assertTrue(assertThrows(ExchangeException.class, () -> obstacles(null, file)).getMessage().contains("name the grid"));
    }

    @Test
    void whatLiesBesideItMustBeThere() throws IOException {
        for (String ending : List.of("prj", "dbf")) {
            Path beside = folder.resolve("points." + ending);
            byte[] kept = Files.readAllBytes(beside);
            Files.delete(beside);
            assertTrue(refusal(copy).contains("has no ." + ending), ending);
            Files.write(beside, kept);
        }
        assertEquals(2, assertDoesNotThrow(copy).size());
    }

    private static List<SurveyShape> assertDoesNotThrow(Path file) {
        try {
            return shapes(file);
        } catch (ExchangeException e) {
            throw new AssertionError(e);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', quoteCharacter = '`', value = {
        "GEOGCS[\"GCS_North_American_1927\",DATUM[\"D_North_American_1927\"]]",
        "PROJCS[\"NAD83 / Washington North (ftUS)\",UNIT[\"US survey foot\",0.3048006096012192]]",
        "GEOCCS[\"WGS 84\",DATUM[\"WGS_1984\"]]",
        "whatever"})
    void anotherReferenceIsRefused(String prj) throws IOException {
        Files.writeString(folder.resolve("points.prj"), prj);
        assertTrue(refusal(copy).contains("names neither"), prj);
    }

    /** The part of the heights stands behind that of the places, each with a unit of its own. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', quoteCharacter = '`', value = {
        "PROJCS[\"UTM\",GEOGCS[\"GCS_WGS_1984\"],UNIT[\"Metre\",1.0]],VERTCS[\"sea\",VDATUM[\"sea\"],UNIT[\"Foot_US\",0.3048006096]]",
        "PROJCS[\"state\",GEOGCS[\"GCS_WGS_1984\"],UNIT[\"Foot_US\",0.3048006096]],VERTCS[\"sea\",VDATUM[\"sea\"],UNIT[\"Meter\",1.0]]",
        "GEOGCS[\"GCS_WGS_1984\",UNIT[\"Degree\",0.0174532925199433]],VERTCS[\"sea\",VDATUM[\"sea\"],UNIT[\"Foot\",0.3048]]"})
    void feetOfPlacesOrHeightsAreRefused(String prj) throws IOException {
        Files.writeString(folder.resolve("points.prj"), prj);
        assertTrue(refusal(copy).contains("has a unit of 0.3048"), prj);
    }

    @Test
    void theDatumOfTheHeightsIsHeldAgainstThatOfTheAerodrome() throws IOException {
        Files.writeString(folder.resolve("points.prj"), "GEOGCS[\"GCS_WGS_1984\",UNIT[\"Degree\",0.0174532925199433]],"
                + "VERTCS[\"WGS_1984\",DATUM[\"D_WGS_1984\"],UNIT[\"Meter\",1.0]]");
        SurveyOrigin origin = new SurveyOrigin("survey", Optional.of("2026-05-20"), Optional.empty(), OptionalDouble.empty(),
                OptionalDouble.empty(), SurveyHeights.AS_STATED);
        String fault = assertThrows(ExchangeException.class, () -> SurveyReading.of(Demo.project(), copy, origin, Optional.empty(),
                SurveyReading.Form.OBSTACLES).refuseFaults(false)).getMessage();
        assertTrue(fault.contains("WGS_1984") && fault.contains("Harrow Vale local mean sea level"), fault);
    }

    @Test
    void everyCutIsRefused() throws IOException {
        for (String ending : List.of("shp", "dbf")) {
            Path file = folder.resolve("points." + ending);
            byte[] whole = Files.readAllBytes(file);
            int last = "dbf".equals(ending) ? whole.length - 1 : whole.length;
            for (int end = 0; end < last; end += 3) {
                Files.write(file, Arrays.copyOf(whole, end));
                assertTrue(refusal(copy).startsWith(folder.toString()), ending + " cut at " + end);
            }
            Files.write(file, whole);
        }
    }

    /** Offsets and sizes are those of the technical description; numbers beyond the file must not be believed. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "0; big; 9995; is no shapefile",
        "28; little; 1001; is no shapefile",
        "24; big; 2000000000; record",
        "104; big; 2000000000; has a record of 4000000000 bytes",
        "104; big; -1; has a record of -2 bytes",
        "108; little; 31; is a shape of the type 31",
        "108; little; 5; shorter than",
        "108; little; 8; shorter than"})
    void whatTheFileClaimsIsHeldAgainstIt(int at, String order, int value, String reason) throws IOException {
        ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(copy));
        bytes.order("big".equals(order) ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN).putInt(at, value);
        Files.write(copy, bytes.array());
        String said = refusal(copy);
        assertTrue(said.contains(reason), said);
    }

    @Test
    void aPlaceThatIsNoneIsRefused() throws IOException {
        byte[] whole = Files.readAllBytes(copy);
        for (double x : new double[] {Double.NaN, Double.POSITIVE_INFINITY, 181}) {
            ByteBuffer bytes = ByteBuffer.wrap(whole.clone()).order(ByteOrder.LITTLE_ENDIAN);
            Files.write(copy, bytes.putDouble(RECORD + 4, x).array());
            assertTrue(refusal(copy).contains(x == 181 ? "out of range" : "has a position at"), String.valueOf(x));
        }
    }

    @Test
    void theTableHasARowForEachShape() throws IOException {
        Path table = folder.resolve("points.dbf");
        byte[] whole = Files.readAllBytes(table);
        ByteBuffer more = ByteBuffer.wrap(whole.clone()).order(ByteOrder.LITTLE_ENDIAN).putInt(4, 3);
        Files.write(table, more.array());
        assertTrue(refusal(copy).contains("more rows"));
        ByteBuffer fewer = ByteBuffer.wrap(whole.clone()).order(ByteOrder.LITTLE_ENDIAN).putInt(4, 1);
        Files.write(table, fewer.array());
        assertTrue(refusal(copy).contains("fewer rows"));
        byte[] deleted = whole.clone();
        deleted[fewer.getShort(8)] = '*';
        Files.write(table, deleted);
        assertTrue(refusal(copy).contains("marked as deleted"));
    }

    @Test
    void lettersNeedAnEncoding() throws Exception {
        Path table = folder.resolve("points.dbf");
        String text = Files.readString(table, StandardCharsets.ISO_8859_1);
        Files.writeString(table, text.replace("Dairy chimney", "Daïry chimney"), StandardCharsets.ISO_8859_1);
        Files.writeString(folder.resolve("points.cpg"), "ISO-8859-1");
        assertEquals("Daïry chimney", shapes(copy).get(1).text(SurveyShape.Fact.NAME).orElseThrow());
        Files.writeString(folder.resolve("points.cpg"), "UTF-8");
        assertTrue(refusal(copy).contains("is not written in UTF-8"));
        Files.writeString(folder.resolve("points.cpg"), "no such encoding");
        assertTrue(refusal(copy).contains("encoding that is not known"));
        Files.delete(folder.resolve("points.cpg"));
        assertTrue(refusal(copy).contains("is not written in US-ASCII"));
    }

    /** Two outlines, of which the first has a hole: rings that run clockwise are outlines, the others holes. */
    @Test
    void holesAreTakenAsFilled() throws Exception {
        double[][] rings = {{0, 0, 0, 4, 4, 4, 4, 0, 0, 0}, {1, 1, 2, 1, 2, 2, 1, 2, 1, 1}, {10, 0, 10, 4, 14, 4, 14, 0, 10, 0}};
        int content = 4 + 32 + 8 + 4 * rings.length + 16 * 15;
        ByteBuffer file = ByteBuffer.allocate(RECORD + content);
        file.putInt(0, 9994).putInt(24, file.capacity() / 2).putInt(HEAD, 1).putInt(HEAD + 4, content / 2);
        file.order(ByteOrder.LITTLE_ENDIAN).putInt(28, 1000).putInt(32, 5).position(RECORD);
        file.putInt(5).position(RECORD + 36);
        file.putInt(rings.length).putInt(15).putInt(0).putInt(5).putInt(10);
        for (double[] ring : rings) {
            for (double number : ring) {
                file.putDouble(number / 1000);
            }
        }
        Files.write(copy, file.array());
        Path table = folder.resolve("points.dbf");
        Files.write(table, ByteBuffer.wrap(Files.readAllBytes(table)).order(ByteOrder.LITTLE_ENDIAN).putInt(4, 1).array());
        List<SurveyShape> found = new ArrayList<>();
        List<String> notes = Surveys.english(SurveyFile.read(copy, found::add));
        assertEquals(List.of("1 holes of polygons, which are taken as filled, skipped"), notes);
        assertEquals(List.of("SV-101-1", "SV-101-2"), found.stream().map(shape -> shape.text(SurveyShape.Fact.ID).orElseThrow()).toList());
        assertEquals(List.of(4, 4), found.stream().map(shape -> shape.vertices().size()).toList());
        assertEquals(0.010, found.get(1).vertices().get(0).east());
        assertEquals(0.004, found.get(1).vertices().get(1).north());
    }
}
