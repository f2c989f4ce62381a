package slopewright.exchange.survey;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import net.sf.geographiclib.Geodesic;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.evaluation.ProjectEvaluation;
import slopewright.exchange.Demo;
import slopewright.exchange.ExchangeException;
import slopewright.exchange.map.GeoJsonFile;
import slopewright.exchange.map.KmlFile;
import slopewright.exchange.map.MapDocument;
import slopewright.exchange.map.MapExport;
import slopewright.model.GroundLevel;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.SurveyBlock;
import slopewright.model.io.ProjectFile;
import slopewright.siting.site.SurveyPoints;

/** Surveys brought into a project. */
class SurveyImportTest {

    @TempDir
    private Path folder;

    private static SurveyOrigin origin(String grid) {
        return new SurveyOrigin("field book 7", Optional.of("2026-05-20"), Optional.ofNullable(grid), OptionalDouble.of(0.5),
                OptionalDouble.of(0.3), SurveyHeights.AS_STATED);
    }

    private static Path survey(String name) {
        return Path.of(System.getProperty("slopewright.root"), "demo-data", "harrow-vale", "survey", name);
    }

    private static List<Obstacle> added(Project project) {
        List<Obstacle> all = project.getAerodrome().getObstacles();
        return all.subList(5, all.size());
    }

    /** The figures are those of the file, read by eye. */
    @ParameterizedTest
    @ValueSource(strings = {"obstacles.csv", "obstacles.geojson", "obstacles.kml", "obstacles.kmz"})
    void everyFormatGivesTheSameObstacles(String name) throws ExchangeException {
        Project project = Demo.project();
        SurveyReading result = Surveys.obstacles(project, survey(name), origin(null));
        assertEquals(4, result.count());
        List<Obstacle> obstacles = added(project);
        assertEquals(List.of("SV-101", "SV-102", "SV-103", "SV-104"), obstacles.stream().map(Obstacle::getId).toList());
        Obstacle poplar = obstacles.get(0);
        assertEquals("Marl farm poplar", poplar.getName());
        assertEquals(107.42, poplar.getTopElevationM());
        assertEquals(47.301104512, poplar.getPlaces().get(0).getLatitudeDeg());
        assertEquals(-11.921880330, poplar.getPlaces().get(0).getLongitudeDeg());
        assertEquals(0.5, poplar.getHorizontalAccuracyM());
        assertEquals(0.3, poplar.getVerticalAccuracyM());
        assertEquals("field book 7", poplar.getSource());
        assertEquals("2026-05-20", poplar.getDate());
        Obstacle barn = obstacles.get(2);
        assertEquals(ObstacleKind.AREA, barn.getKind());
        assertEquals(4, barn.getPlaces().size());
        assertEquals(96.80, barn.getTopElevationM());
        assertNull(barn.getPlaces().get(0).getElevationM());
        Obstacle line = obstacles.get(3);
        assertEquals(ObstacleKind.LINE, line.getKind());
        assertEquals(List.of(98.10, 97.65, 98.30), line.getPlaces().stream().map(Place::getElevationM).toList());
        assertEquals(98.30, line.getTopElevationM());
        int before = project.getAerodrome().getObstacles().size();
        assertEquals(4, Surveys.obstacles(project, survey(name), origin(null)).repeated());
        assertEquals(before, project.getAerodrome().getObstacles().size());
    }

    /** The coordinates of the grid file were made of those of the CSV by PROJ, another library, to 0.1 mm. */
    @Test
    void gridCoordinatesComeOutWhereAnotherLibraryPutThem() throws ExchangeException {
        Project geodetic = Demo.project();
        Surveys.obstacles(geodetic, survey("obstacles.csv"), origin(null));
        Project grid = Demo.project();
        SurveyReading result = Surveys.obstacles(grid, survey("obstacles-utm29.dxf"), origin("EPSG:32629"));
        assertEquals(5, result.count());
        assertEquals(List.of("TREE 1", "CHIMNEY 1", "BUILDING 1", "POWER-LINE 1", "HEDGE 1"),
                added(grid).stream().map(Obstacle::getName).toList());
        for (int i = 0; i < 4; i++) {
            assertEquals(added(geodetic).get(i).getTopElevationM(), added(grid).get(i).getTopElevationM());
            assertSamePlaces(added(geodetic).get(i), added(grid).get(i));
        }
        assertEquals(90.15, added(grid).get(4).getPlaces().get(0).getElevationM());
        Project own = Demo.project();
        own.getAerodrome().setCoordinateReference("EPSG:32629");
        Surveys.groundLevels(own, survey("ground-levels-utm29.csv"), origin(null));
        GroundLevel first = own.getAerodrome().getGroundLevels().get(4);
        assertEquals("GL-01", first.getId());
        assertEquals(281110.516, first.getPlace().getEastM());
        assertEquals(86.40, first.getPlace().getElevationM());
    }

    private static void assertSamePlaces(Obstacle one, Obstacle other) {
        assertEquals(one.getPlaces().size(), other.getPlaces().size());
        for (Place place : one.getPlaces()) {
            double nearest = other.getPlaces().stream().mapToDouble(there -> Geodesic.WGS84.Inverse(place.getLatitudeDeg(),
                    place.getLongitudeDeg(), there.getLatitudeDeg(), there.getLongitudeDeg()).s12).min().orElseThrow();
            assertEquals(0, nearest, 0.001, one.getName());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"geojson", "kml"})
    void whatIsExportedComesBackWithinAMillimetre(String ending) throws IOException, ExchangeException {
        Project project = Demo.project();
        ProjectEvaluation evaluation = Demo.evaluate(project);
        MapDocument map = MapExport.of(evaluation, evaluation.aids(), 5000, Demo.ENGLISH);
        Path file = Files.write(folder.resolve("map." + ending), "kml".equals(ending) ? KmlFile.bytes(map) : GeoJsonFile.bytes(map));
        Project fresh = Demo.project();
        fresh.getAerodrome().getObstacles().clear();
        SurveyReading result = Surveys.obstacles(fresh, file, origin(null));
        assertEquals(5, result.count());
        assertTrue(Surveys.english(result.notes()).contains("11 features of the kind unit skipped"), result.notes().toString());
        for (int i = 0; i < 5; i++) {
            Obstacle one = project.getAerodrome().getObstacles().get(i);
            Obstacle back = fresh.getAerodrome().getObstacles().get(i);
            assertEquals(one.getId(), back.getId());
            assertEquals(one.getKind(), back.getKind());
            assertSamePlaces(one, back);
            double top = one.getTopElevationM() != null ? one.getTopElevationM()
                    : one.getPlaces().stream().mapToDouble(Place::getElevationM).max().orElseThrow();
            assertEquals(top, back.getTopElevationM(), 0.001);
            assertEquals(one.getSource(), back.getSource());
        }
        assertEquals(116.5, fresh.getAerodrome().getObstacles().get(2).getPlaces().get(1).getElevationM());
    }

    @Test
    void manyPointsBecomeABlockBesideTheProject() throws ExchangeException, IOException {
        Project project = Demo.project();
        SurveyReading block = Surveys.block(project, survey("canopy-points.csv"), origin(null));
        assertEquals(600, block.count());
        SurveyBlock element = project.getSurveyBlocks().get(0);
        assertEquals(Surveys.fileName(block), element.getPath());
        assertEquals(0.4, element.getHorizontalAccuracyM());
        assertEquals(0.25, element.getVerticalAccuracyM());
        Files.write(folder.resolve(Surveys.fileName(block)), Surveys.bytes(block));
        SurveyPoints points = SurveyPoints.read(element, folder);
        assertEquals(600, points.count());
        assertEquals("C0001", points.id(0));
        assertEquals(47.2892, points.north()[0]);
        assertEquals(-11.9041, points.east()[0]);
        assertEquals(89.33, points.elevationM()[0]);
        assertArrayEquals(Surveys.bytes(block), Surveys.bytes(Surveys.block(Demo.project(), survey("canopy-points.csv"), origin(null))));
        assertEquals(600, Surveys.block(project, survey("canopy-points.csv"), origin(null)).repeated());
        assertEquals(1, project.getSurveyBlocks().size());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "id,latitudeDeg,longitudeDeg,elevationM;a,47.3,-11.9,90;b,47.3,x,90 | :3: longitudeDeg: 'x' is not a number",
        "id,latitudeDeg,longitudeDeg,elevationM;a,47.3,-11.9 | :2: the row has 3 fields where the header has 4",
        "id,latitudeDeg,longitudeDeg,elevationM;a,47.3,-11.9,90;a,47.3,-11.8,90 | :3: 'a' has the id of line 2",
        "id,latitudeDeg,longitudeDeg,elevationM;a,47.3,-11.9, | :2: 'a' has no elevation of its top",
        "id,latitudeDeg,longitudeDeg,heightM;a,47.3,-11.9,12 | :2: 'a' has a height above ground, but no elevation of the ground",
        "id,latitudeDeg,longitudeDeg,elevationM;a,-11.9,47.3,90 | km from the aerodrome",
        "id,latitudeDeg,longitudeDeg,elevationM;a,97,-11.9,90 | :2: latitude 97 and longitude -11.9 are out of range",
        "id,latitudeDeg,longitudeDeg,elevationM;a,47.3,-11.9,30000 | :2: 'a' stands at an elevation of 30000 m",
        "id,latitudeDeg,longitudeDeg,elevationM;a,47.3,-11.9,NaN | :2: 'a' elevationM: 'NaN' is not a number",
        "id,eastM,northM,elevationM;a,1,2,90 | :2: 'a' has east and north, but the coordinate reference of the aerodrome is WGS84",
        "id,latitudeDeg,longitudeDeg,elevationM | holds nothing to import",
        "id,latitudeDeg,longitudeDeg,elevationM;\"a,47.3,-11.9,90 | quote",
        "id,lat,lon;a,1,2 | :1: the header needs either latitudeDeg and longitudeDeg",
        "id,latitudeDeg,longitudeDeg,elevationM,elevation;a,1,2,3,4 | :1: the column 'elevation' says what another column says",
        "id,shape,latitudeDeg,longitudeDeg,elevationM;a,area,47.3,-11.9,90;a,area,47.31,-11.9,90 | :2: a shape has 2 positions where 3",
        "id,shape,latitudeDeg,longitudeDeg,topElevationM;a,line,47.3,-11.9,90;a,line,47.31,-11.9,99 | :3: says '99' where line 2",
        "id,latitudeDeg,longitudeDeg,elevationM,date;a,47.3,-11.9,90,May | :2: 'a' has the date 'May'"})
    void aFaultyCsvIsNamedAndChangesNothing(String lines, String reason) throws IOException {
        Path file = Files.writeString(folder.resolve("s.csv"), lines.replace(';', '\n') + "\n");
        refused(file, reason);
    }

    private static void refused(Path file, String reason) {
        Project project = Demo.project();
        byte[] before = ProjectFile.bytes(project);
        String message = "";
        try {
            Surveys.obstacles(project, file, origin(null));
        } catch (ExchangeException e) {
            message = e.getMessage();
        }
        assertTrue(message.startsWith(file.toString()) && message.contains(reason), message);
        assertArrayEquals(before, ProjectFile.bytes(project));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "s.geojson | {\"type\":\"FeatureCollection\",~\"features\":[~{\"type\":\"Feature\",\"geometry\":{\"type\":\"Point\","
                + "\"coordinates\":[-11.9]},\"properties\":{}}]} | :3: a position is not two or three numbers",
        "s.geojson | {\"type\":\"FeatureCollection\",~\"features\":[~{\"type\":\"Feature\",\"geometry\":null,\"properties\":{}}]} | :3: a "
                + "feature has no geometry",
        "s.geojson | {\"type\":\"FeatureCollection\",~~\"features\":[{]} | :3: ",
        "s.geojson | {\"type\":\"Feature\"} | is Feature where a FeatureCollection is needed",
        "s.geojson | {\"crs\":{\"properties\":{\"name\":\"EPSG:3857\"}}} | names the coordinate reference",
        "s.kml | <kml>~<Placemark><Point><coordinates>-11.9,47.3,5</coordinates></Point></Placemark></kml> | :2: the altitude of a "
                + "placemark does not count",
        "s.kml | <kml>~~<Placemark><Point><altitudeMode>absolute</altitudeMode><coordinates>1;2</coordinates></Point></Placemark></kml> | "
                + ":3: '1;2' is not longitude",
        "s.kml | <!DOCTYPE kml [<!ENTITY a \"b\">]>~<kml>&a;</kml> | a document type is not accepted",
        "s.kml | <!DOCTYPE kml SYSTEM \"file:///etc/passwd\">~<kml></kml> | a document type is not accepted",
        "s.kml | <gpx/> | is no KML",
        "s.kml | <kml>~<Document></kml> | :2: ",
        "s.dxf | 0~SECTION~2~ENTITIES~0~POINT~8~A~10~x | :10: group 10: 'x' is not a number",
        "s.dxf | 0~SECTION~2~ENTITIES~0~POINT~10~1~20~2 | ends before EOF",
        "s.dxf | 0~SECTION~2~HEADER~9~$INSUNITS~70~2~0~ENDSEC~0~EOF | :8: the drawing unit ($INSUNITS) is 2",
        "s.dxf | zero~SECTION | :1: 'zero' is no group code", "s.dxf | AutoCAD Binary DXF~x | is a binary DXF",
        "s.dxf | 0~SECTION~2~ENTITIES~0~POLYLINE~8~A~70~1~0~EOF | a POLYLINE is not ended by SEQEND",
        "s.gpx | x | must end in .csv", "s.shp | x | has no .prj", "none.csv | | there is no such file"})
    void aFaultyFileOfAnotherFormatIsNamed(String name, String text, String reason) throws IOException {
        Path file = folder.resolve(name);
        if (text != null) {
            Files.writeString(file, text.replace('~', '\n') + "\n");
        }
        refused(file, reason);
    }

    @Test
    void aFileThatIsNotUnicodeIsNamed() throws IOException {
        Path file = Files.write(folder.resolve("s.csv"), new byte[] {'i', 'd', (byte) 0xFF, '\n'});
        refused(file, "is not written in UTF-8");
    }

    /** Deep nesting, and a billion laughs without a document type, end with a reason. */
    @Test
    void aHostileFileEndsWithAReason() throws IOException {
        refused(Files.writeString(folder.resolve("deep.kml"), "<kml>" + "<Folder>".repeat(5000)), "deep in each other");
        refused(Files.writeString(folder.resolve("deep.geojson"), "{\"features\":" + "[".repeat(50_000)), "nesting depth");
    }

    /** A line whose positions all stand lower than its stated top has heights of the ground: the top counts for all of it. */
    @Test
    void aStatedTopIsNeverLowered() throws IOException, ExchangeException {
        Path file = Files.writeString(folder.resolve("s.geojson"), """
                {"type":"FeatureCollection","features":[
                {"type":"Feature","geometry":{"type":"LineString","coordinates":[[-11.9,47.31,80],[-11.9,47.32,82]]},
                 "properties":{"topElevationM":105}},
                {"type":"Feature","geometry":{"type":"Point","coordinates":[-11.9,47.33]},
                 "properties":{"height":25,"groundElevation":80}}]}
                """);
        Project project = Demo.project();
        Surveys.obstacles(project, file, origin(null));
        assertEquals(105.0, added(project).get(0).getTopElevationM());
        assertNull(added(project).get(0).getPlaces().get(0).getElevationM());
        assertEquals(105.0, added(project).get(1).getTopElevationM(), "80 m of ground and 25 m");
    }

    @Test
    void aBlockHoldsPointsOnly() throws IOException {
        Path file = Files.writeString(folder.resolve("s.csv"), "shape,id,latitudeDeg,longitudeDeg,elevationM\nline,a,47.3,-11.9,90\n"
                + "line,a,47.31,-11.9,90\n");
        String message = "";
        try {
            Surveys.block(Demo.project(), file, origin(null));
        } catch (ExchangeException e) {
            message = e.getMessage();
        }
        assertTrue(message.contains(":2: 'a' is no point"), message);
    }
}
