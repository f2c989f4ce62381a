package slopewright.exchange.survey;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.exchange.Demo;
import slopewright.exchange.ExchangeException;
import slopewright.model.GroundLevel;
import slopewright.model.Obstacle;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;

/** No import loses a height: elevation = ground + height is reconciled, or the file is refused with its line. Sums done by hand. */
class SurveyHeightsTest {

    @TempDir
    private Path folder;

    private static Path given(String name) {
        return Path.of(System.getProperty("slopewright.root"), "bundles", "tests", "slopewright.exchange.tests", "cases", name);
    }

    private static SurveyOrigin origin(String meaning, OptionalDouble groundM) {
        return new SurveyOrigin("test", Optional.empty(), Optional.of("EPSG:32629"), OptionalDouble.empty(), OptionalDouble.empty(),
                new SurveyHeights(SurveyHeights.Meaning.find(meaning).orElseThrow(), groundM));
    }

    private static Obstacle obstacle(Path file, String meaning, OptionalDouble groundM) throws ExchangeException {
        Project project = Demo.project();
        int before = project.getAerodrome().getObstacles().size();
        assertEquals(1, Surveys.obstacles(project, file, origin(meaning, groundM)).count());
        return project.getAerodrome().getObstacles().get(before);
    }

    private static List<String> refused(Path file, String meaning) {
        Project project = Demo.project();
        byte[] before = ProjectFile.bytes(project);
        ExchangeException fault = assertThrows(ExchangeException.class,
                () -> Surveys.obstacles(project, file, origin(meaning, OptionalDouble.empty())));
        assertArrayEquals(before, ProjectFile.bytes(project), "nothing is changed");
        return Surveys.english(fault.messages());
    }

    private Path csv(String columns, String row) throws IOException {
        return Files.writeString(folder.resolve("s.csv"), "id,latitudeDeg,longitudeDeg," + columns + "\nm,47.298,-11.934," + row + "\n");
    }

    /** An elevation of 86 m and a height of 114 m: the top is at 200 m, or at 86 m with the ground at -28 m. Nobody may guess. */
    @ParameterizedTest
    @CsvSource({"elev-height.csv, 2", "h.geojson, 1"})
    void anElevationBesideAHeightIsAskedFor(String name, long line) throws ExchangeException {
        List<String> faults = refused(given(name), "as-stated");
        assertEquals(1, faults.size());
        assertTrue(faults.get(0).startsWith(given(name) + ":" + line + ": "), faults.get(0));
        assertTrue(faults.get(0).contains("top at 200 m") && faults.get(0).contains("ground at -28 m"), faults.get(0));
        assertEquals(200.0, obstacle(given(name), "ground", OptionalDouble.empty()).getTopElevationM());
        assertEquals(86.0, obstacle(given(name), "top", OptionalDouble.empty()).getTopElevationM());
    }

    /** Group 30 of the header of a polyline that is none in space is its elevation. */
    @Test
    void thePolylineStandsAtTheElevationOfItsHeader() throws ExchangeException, IOException {
        Obstacle line = obstacle(given("polyelev.dxf"), "as-stated", OptionalDouble.empty());
        assertEquals(200.0, line.getTopElevationM());
        assertEquals(2, line.getPlaces().size());
        assertNull(line.getPlaces().get(0).getElevationM(), "the top holds for all of it");
        Path both = Files.writeString(folder.resolve("both.dxf"), Files.readString(given("polyelev.dxf")).replace("30\n0.0", "30\n150.0"));
        List<String> faults = refused(both, "as-stated");
        assertTrue(faults.get(0).contains("150 m") && faults.get(0).contains("200 m in its header"), faults.get(0));
    }

    @Test
    void aZeroIsNoElevationUnlessItIsSaidToBeOne() throws ExchangeException {
        List<String> faults = refused(given("z0.dxf"), "as-stated");
        assertTrue(faults.get(0).startsWith(given("z0.dxf") + ":6: 'MAST 1' stands at an elevation of 0 m"), faults.get(0));
        assertEquals(0.0, obstacle(given("z0.dxf"), "top", OptionalDouble.empty()).getTopElevationM());
        assertTrue(refused(given("z0.dxf"), "above-ground").get(0).contains("no elevation of the ground"));
    }

    @Test
    void aControlCharacterIsNamedWithItsLine() {
        List<String> faults = refused(given("ctrl.csv"), "as-stated");
        assertEquals(List.of(given("ctrl.csv") + ":2: the name holds the control character U+0001"), faults);
    }

    @Test
    void aByteOrderMarkIsNoFault() throws ExchangeException, IOException {
        assertEquals(114.0, obstacle(given("bom.geojson"), "as-stated", OptionalDouble.empty()).getTopElevationM());
        Path marked = Files.writeString(folder.resolve("bom.csv"), "\uFEFFid,latitudeDeg,longitudeDeg,topElevationM\n"
                + "m,47.298,-11.934,99\n");
        assertEquals(99.0, obstacle(marked, "as-stated", OptionalDouble.empty()).getTopElevationM());
        Path kml = Files.writeString(folder.resolve("bom.kml"), "\uFEFF<kml><Placemark><Point><altitudeMode>absolute</altitudeMode>"
                + "<coordinates>-11.934,47.298,99</coordinates></Point></Placemark></kml>");
        assertEquals(99.0, obstacle(kml, "as-stated", OptionalDouble.empty()).getTopElevationM());
        Path wide = Files.write(folder.resolve("wide.csv"), new byte[] {(byte) 0xFF, (byte) 0xFE, 'i', 0, 'd', 0});
        assertTrue(refused(wide, "as-stated").get(0).endsWith(":1: is written in UTF-16; write it in UTF-8"));
    }

    /** The reader of the platform prints a line of its own where it meets a byte that is no letter; nobody reads that here. */
    @Test
    void whatIsNoLetterIsRefusedAndNothingElseIsPrinted() throws IOException, ExchangeException {
        String mark = "<kml><Placemark><name>M\u00fchle</name><Point><altitudeMode>absolute</altitudeMode>"
                + "<coordinates>-11.934,47.298,99</coordinates></Point></Placemark></kml>";
        Path latin = Files.writeString(folder.resolve("latin.kml"), mark, StandardCharsets.ISO_8859_1);
        Path declared = Files.writeString(folder.resolve("declared.kml"), "<?xml version='1.0' encoding='ISO-8859-1'?>" + mark,
                StandardCharsets.ISO_8859_1);
        Path odd = Files.writeString(folder.resolve("odd.kml"), "<?xml version='1.0' encoding='X-NOBODY'?>" + mark);
        PrintStream before = System.err;
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        try (PrintStream err = new PrintStream(printed)) {
            System.setErr(err);
            assertTrue(refused(latin, "as-stated").get(0).endsWith("latin.kml: is not written in UTF-8"));
            assertTrue(refused(odd, "as-stated").get(0).endsWith("its encoding 'X-NOBODY' is not known"));
        } finally {
            System.setErr(before);
        }
        assertEquals("", printed.toString());
        assertEquals("M\u00fchle", obstacle(declared, "as-stated", OptionalDouble.empty()).getName());
    }

    /** Columns, values, what elevations are, the ground where it is said; then the top by hand. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", value = {
        "groundElevationM,heightM | 86,28 | as-stated | - | 114",
        "topElevationM,groundElevationM,heightM | 114,86,28 | as-stated | - | 114",
        "topElevationM,groundElevationM,heightM | 114,86.1,28 | as-stated | - | 114.1",
        "topElevationM,elevationM,heightM | 114,86,28 | as-stated | - | 114",
        "elevationM,groundElevationM,heightM | 114,86,28 | as-stated | - | 114",
        "elevationM,groundElevationM,heightM | 86,86,28 | as-stated | - | 114",
        "topElevationM,elevationM | 114,86 | as-stated | - | 114",
        "elevationM,groundElevationM | 114,86 | as-stated | - | 114",
        "elevationM | 114 | as-stated | - | 114",
        "elevationM,heightM | 86,28 | ground | - | 114",
        "elevationM,heightM | 114,28 | top | - | 114",
        "elevationM,topElevationM | 86,114 | ground | - | 114",
        "elevationM | 28 | above-ground | 86 | 114",
        "heightM | 28 | above-ground | 86 | 114",
        "heightM,groundElevationM | 28,87 | above-ground | 86 | 115",
        "topElevationM,heightM | 114,28 | as-stated | - | 114",
        "topElevationM | 0 | top | - | 0"})
    void whatFitsTogetherIsReconciled(String columns, String row, String meaning, Double groundM, double topM)
            throws IOException, ExchangeException {
        OptionalDouble ground = groundM == null ? OptionalDouble.empty() : OptionalDouble.of(groundM);
        assertEquals(topM, obstacle(csv(columns, row), meaning, ground).getTopElevationM(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "topElevationM,groundElevationM,heightM | 114,86,20 | as-stated | has its top at 114 m, but its ground at 86 m and its "
                + "height of 20 m make 106 m",
        "topElevationM,groundElevationM | 80,86 | as-stated | has its top at 80 m, which is not above its ground at 86 m",
        "topElevationM,groundElevationM | 86,86 | as-stated | which is not above its ground",
        "elevationM,groundElevationM | 80,86 | as-stated | which is not above its ground",
        "topElevationM,elevationM | 100,114 | as-stated | which is neither its top at 100 m nor its ground",
        "topElevationM,elevationM,heightM | 114,100,28 | as-stated | which is neither its top at 114 m nor its ground",
        "topElevationM,heightM | 114,0 | as-stated | has a height of 0 m above the ground",
        "topElevationM,heightM | 114,-3 | as-stated | has a height of -3 m above the ground",
        "heightM | 28 | as-stated | has a height above ground, but no elevation of the ground",
        "heightM | 28 | ground | has a height above ground, but no elevation of the ground",
        "elevationM | 86 | ground | has neither a height above the ground nor an elevation of its top",
        "elevationM,groundElevationM,heightM | 90,86,28 | ground | has its ground at 86 m and at 90 m",
        "elevationM,topElevationM | 86,80 | ground | which is not above its ground",
        "elevationM | 28 | above-ground | no elevation of the ground",
        "elevationM,heightM,groundElevationM | 20,28,86 | above-ground | has heights of 28 m and 20 m above the ground",
        "heightM,groundElevationM,topElevationM | 28,86,120 | above-ground | make 114 m",
        "topElevationM | 0 | as-stated | stands at an elevation of 0 m",
        "topElevationM,heightM |  ,  | as-stated | has no elevation of its top"})
    void whatDoesNotFitTogetherIsRefused(String columns, String row, String meaning, String reason) throws IOException {
        List<String> faults = refused(csv(columns, row), meaning);
        assertEquals(1, faults.size());
        assertTrue(faults.get(0).contains("s.csv:2: 'm' ") && faults.get(0).contains(reason), faults.get(0));
    }

    /** Every faulty line is named, not the first alone. */
    @Test
    void everyLineIsNamed() throws IOException {
        Path file = Files.writeString(folder.resolve("many.csv"), """
                id,latitudeDeg,longitudeDeg,elevationM,heightM
                a,47.298,-11.934,86,20
                b,47.298,-11.935,100,
                c,47.298,-11.936,0,
                d,47.298,-11.937,90,0
                """);
        List<String> faults = refused(file, "as-stated");
        assertEquals(List.of("2", "4", "5"), faults.stream().map(fault -> fault.substring(file.toString().length() + 1).split(":")[0])
                .toList());
    }

    /** Two points of a line with the ground at 80 and 82 m and a height of 25 m: 105 and 107 m. */
    @Test
    void positionsOnTheGroundAreRaised() throws IOException, ExchangeException {
        Path file = Files.writeString(folder.resolve("s.geojson"), """
                {"type":"FeatureCollection","features":[
                {"type":"Feature","geometry":{"type":"LineString","coordinates":[[-11.93,47.31,80],[-11.93,47.32,82]]},
                 "properties":{"height":25}}]}
                """);
        assertTrue(refused(file, "as-stated").get(0).contains("does not say whether"));
        Obstacle line = obstacle(file, "ground", OptionalDouble.empty());
        assertEquals(107.0, line.getTopElevationM());
        assertEquals(List.of(105.0, 107.0), line.getPlaces().stream().map(Place::getElevationM).toList());
    }

    /** In KML an altitude over the ground is a height: 25 m over 80 m. */
    @Test
    void altitudesOverTheGroundAreHeights() throws IOException, ExchangeException {
        String mark = "<kml><Placemark><ExtendedData><Data name=\"groundElevationM\"><value>80</value></Data></ExtendedData><Point>"
                + "<altitudeMode>relativeToGround</altitudeMode><coordinates>-11.934,47.298,25</coordinates></Point></Placemark></kml>";
        assertEquals(105.0, obstacle(Files.writeString(folder.resolve("s.kml"), mark), "as-stated", OptionalDouble.empty())
                .getTopElevationM());
        Path twice = Files.writeString(folder.resolve("t.kml"), mark.replace("<Data name=",
                "<Data name=\"heightM\"><value>20</value></Data><Data name="));
        assertTrue(refused(twice, "as-stated").get(0).contains("gives the heightM twice: '20' and '25.0'"));
    }

    @Test
    void aPropertyThatIsGivenTwiceMustAgree() throws IOException, ExchangeException {
        String feature = "{\"type\":\"FeatureCollection\",\"features\":[{\"type\":\"Feature\",\"properties\":{\"elevation\":90,\"ele\":%s},"
                + "\"geometry\":{\"type\":\"Point\",\"coordinates\":[-11.934,47.298]}}]}";
        assertEquals(90.0, obstacle(Files.writeString(folder.resolve("a.geojson"), String.format(feature, "90")), "as-stated",
                OptionalDouble.empty()).getTopElevationM());
        Path other = Files.writeString(folder.resolve("b.geojson"), String.format(feature, "120"));
        assertTrue(refused(other, "as-stated").get(0).contains("gives the elevationM twice: '90' and '120'"));
    }

    /** A survey that comes again with another height is not the one that is there already. */
    @Test
    void anotherHeightAtTheSamePlaceIsKeptAndSaid() throws IOException, ExchangeException {
        Project project = Demo.project();
        Surveys.obstacles(project, csv("topElevationM", "90"), origin("as-stated", OptionalDouble.empty()));
        int before = project.getAerodrome().getObstacles().size();
        SurveyOrigin origin = origin("as-stated", OptionalDouble.empty());
        assertEquals(1, Surveys.obstacles(project, csv("topElevationM", "90"), origin).repeated());
        SurveyReading result = Surveys.obstacles(project, csv("topElevationM", "110"), origin);
        assertEquals(1, result.count());
        assertEquals(before + 1, project.getAerodrome().getObstacles().size());
        assertTrue(result.notes().get(0).english().contains("top at 110 m, is added beside m of the same name and place, top at 90 m"),
                result.notes().toString());
    }

    /**
     * Where the geoid lies 30 m below the ellipsoid, a top at 150 m above the ellipsoid is at 180 m above the sea: elevations of another
     * datum are refused, whether the file or whoever imports it says so. The demo has "Harrow Vale local mean sea level (invented)".
     */
    @ParameterizedTest
    @CsvSource(nullValues = "-", value = {"WGS 84 ellipsoid, -, false", "-, WGS 84 ellipsoid, false", "-, -, true",
        "Harrow Vale local mean sea level (invented), -, true", "harrow vale local mean-sea-level invented, -, true",
        "HVD, Harrow Vale local mean sea level (invented), true", "not known, -, true"})
    void elevationsOfAnotherDatumAreRefused(String inFile, String said, boolean taken) throws IOException, ExchangeException {
        Path file = inFile == null ? csv("topElevationM", "150") : csv("topElevationM,verticalDatum", "150," + inFile);
        SurveyOrigin origin = new SurveyOrigin("test", Optional.empty(), Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(),
                SurveyHeights.AS_STATED, Optional.ofNullable(said));
        Project project = Demo.project();
        if (taken) {
            assertEquals(1, Surveys.obstacles(project, file, origin).count());
        } else {
            String fault = assertThrows(ExchangeException.class, () -> Surveys.obstacles(project, file, origin)).getMessage();
            assertTrue(fault.contains("'WGS 84 ellipsoid'") && fault.contains("'Harrow Vale local mean sea level (invented)'"), fault);
        }
    }

    /** A file of GeoJSON may say for which epoch its coordinates hold; where the aerodrome has another, that is said, and nothing moved. */
    @ParameterizedTest
    @CsvSource(nullValues = "-", value = {"2015.5, 2026.4, has the epoch 2026.4", "2015.5, -, names no epoch", "2015.5, 2015.5, -"})
    void anotherEpochIsSaid(String inFile, Double own, String said) throws IOException, ExchangeException {
        Path file = Files.writeString(folder.resolve("epoch.geojson"), "{\"type\":\"FeatureCollection\",\"coordinateEpoch\":" + inFile
                + ",\"features\":[{\"type\":\"Feature\",\"geometry\":{\"type\":\"Point\",\"coordinates\":[-11.934,47.298]},"
                + "\"properties\":{\"topElevationM\":150}}]}");
        Project project = Demo.project();
        project.getAerodrome().setCoordinateEpoch(own);
        List<String> notes = Surveys.english(Surveys.obstacles(project, file, origin("as-stated", OptionalDouble.empty())).notes());
        assertEquals(said != null, notes.stream().anyMatch(note -> note.contains("epoch")), notes.toString());
        assertTrue(said == null || notes.stream().anyMatch(note -> note.contains(said)), notes.toString());
    }

    /** Whoever corrects how exactly a thing was surveyed, and imports it again, has said something new. */
    @Test
    void anotherAccuracyAtTheSamePlaceIsKeptToo() throws IOException, ExchangeException {
        Project project = Demo.project();
        SurveyOrigin origin = origin("as-stated", OptionalDouble.empty());
        String columns = "topElevationM,horizontalAccuracyM,verticalAccuracyM";
        Surveys.obstacles(project, csv(columns, "90,1,0.3"), origin);
        assertEquals(1, Surveys.obstacles(project, csv(columns, "90,1,0.3"), origin).repeated());
        assertEquals(1, Surveys.obstacles(project, csv(columns, "90,1,3"), origin).count());
        assertEquals(1, Surveys.obstacles(project, csv(columns, "90,30,0.3"), origin).count());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "elevationM | 86 | as-stated | 86", "groundElevationM,heightM | 86,28 | as-stated | 86",
        "elevationM,groundElevationM,heightM | 114,86,28 | as-stated | 86", "topElevationM,heightM | 114,28 | as-stated | 86",
        "elevationM,heightM | 86,28 | ground | 86", "elevationM,heightM | 114,28 | top | 86", "elevationM | 0 | ground | 0"})
    void theGroundIsReconciledToo(String columns, String row, String meaning, double groundM) throws IOException, ExchangeException {
        Project project = Demo.project();
        int before = project.getAerodrome().getGroundLevels().size();
        Surveys.groundLevels(project, csv(columns, row), origin(meaning, OptionalDouble.empty()));
        GroundLevel level = project.getAerodrome().getGroundLevels().get(before);
        assertEquals(groundM, level.getPlace().getElevationM(), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(strings = {"elevationM,heightM|86,28|does not say whether", "elevationM|0|lies at an elevation of 0 m",
        "elevationM,groundElevationM|90,86|has its ground at 86 m and an elevation of 90 m",
        "groundElevationM,topElevationM|86,80|is not below its top", "topElevationM|80|has no elevation"})
    void aGroundThatIsNotKnownIsRefused(String text) throws IOException {
        String[] parts = text.split("\\|");
        Path file = csv(parts[0], parts[1]);
        ExchangeException fault = assertThrows(ExchangeException.class, () -> Surveys.groundLevels(Demo.project(), file,
                origin("as-stated", OptionalDouble.empty())));
        assertTrue(fault.getMessage().contains("s.csv:2: 'm' ") && fault.getMessage().contains(parts[2]), fault.getMessage());
    }

    @Test
    void aBlockIsReconciledAsObstaclesAre() {
        ExchangeException fault = assertThrows(ExchangeException.class, () -> Surveys.block(Demo.project(), given("elev-height.csv"),
                origin("as-stated", OptionalDouble.empty())));
        assertTrue(fault.getMessage().contains("does not say whether"), fault.getMessage());
    }
}
