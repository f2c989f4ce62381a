package slopewright.exchange.survey;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import net.sf.geographiclib.Geodesic;
import slopewright.exchange.Demo;
import slopewright.exchange.ExchangeException;
import slopewright.model.Project;
import slopewright.model.SurveyBlock;
import slopewright.siting.site.SurveyPoints;

/**
 * Terrain as an ESRI ASCII grid. The grid of the demo was written by GDAL of heights that were typed in; where its cells lie was worked out
 * by PROJ.
 */
class TerrainImportTest {

    private static final Path GRID = Path.of(System.getProperty("slopewright.root"), "demo-data", "harrow-vale", "survey",
            "terrain-utm29.asc");
    private static final String DATUM = "Harrow Vale local mean sea level (invented)";
    private static final String HEAD = "ncols 2\nnrows 2\nxllcorner 279000\nyllcorner 5242800\ncellsize 10\n";

    @TempDir
    private Path folder;

    private static SurveyOrigin origin(Optional<String> date, OptionalDouble horizontalM, OptionalDouble verticalM,
            Optional<String> datum) {
        return new SurveyOrigin("height model", date, Optional.of("EPSG:32629"), horizontalM, verticalM, SurveyHeights.AS_STATED, datum);
    }

    private static SurveyOrigin whole() {
        return origin(Optional.of("2026-05-20"), OptionalDouble.of(2), OptionalDouble.of(1.5), Optional.of(DATUM));
    }

    private String refusal(Path file, SurveyOrigin origin) {
        Project project = Demo.project();
        int blocks = project.getSurveyBlocks().size();
        String message = assertThrows(ExchangeException.class, () -> Surveys.block(project, file, origin)).getMessage();
        assertEquals(blocks, project.getSurveyBlocks().size());
        return message;
    }

    private Path file(String text) throws IOException {
        return Files.writeString(folder.resolve("terrain.asc"), text);
    }

    private static double awayM(SurveyPoints points, int index, double latitudeDeg, double longitudeDeg) {
        return Geodesic.WGS84.Inverse(points.north()[index], points.east()[index], latitudeDeg, longitudeDeg).s12;
    }

    private SurveyPoints points(Project project, Path file) throws Exception {
        SurveyReading block = Surveys.block(project, file, whole());
        byte[] bytes = Surveys.bytes(block);
        return SurveyPoints.read(Files.write(folder.resolve(Surveys.fileName(block)), bytes), SurveyPoints.sha256(bytes));
    }

    /** Rows run from north to south: the first number is that of the cell in the north-west. */
    @Test
    void everyCellBecomesAPointAtItsMiddle() throws Exception {
        SurveyPoints points = points(Demo.project(), GRID);
        assertEquals(30, points.count());
        assertEquals(101.25, points.elevationM()[0]);
        assertEquals(106.40, points.elevationM()[9]);
        assertEquals(99.45, points.elevationM()[29]);
        assertEquals(0, awayM(points, 9, 47.3027430464276, -11.9223807861093), 0.001);
        assertEquals(0, awayM(points, 24, 47.3019039051336, -11.9235251613291), 0.001);
    }

    /** Half the diagonal of a cell of 30 m, 21.213 m, is added to the 2 m: what stands between the places is held against the nearest. */
    @Test
    void whatLiesBetweenTheCellsIsWithinTheAccuracy() throws ExchangeException {
        Project project = Demo.project();
        Surveys.block(project, GRID, whole());
        SurveyBlock block = project.getSurveyBlocks().get(project.getSurveyBlocks().size() - 1);
        assertEquals(2 + 15 * Math.sqrt(2), block.getHorizontalAccuracyM(), 1e-9);
        assertEquals("terrain", block.getKind());
        assertEquals(1.5, block.getVerticalAccuracyM());
        assertEquals("2026-05-20", block.getDate());
    }

    /** Terrain that was imported before terrain was told apart is the same points and another thing. */
    @Test
    void whatWasTakenForObstaclesIsImportedAgainAsTerrain() throws ExchangeException {
        Project project = Demo.project();
        Surveys.block(project, GRID, whole());
        SurveyBlock old = project.getSurveyBlocks().get(project.getSurveyBlocks().size() - 1);
        assertEquals(30, SurveyReading.of(project, GRID, whole(), Optional.empty(), SurveyReading.Form.BLOCK).repeated());
        old.setKind("obstacles");
        SurveyReading again = SurveyReading.of(project, GRID, whole(), Optional.empty(), SurveyReading.Form.BLOCK);
        assertEquals(0, again.repeated());
        assertEquals("terrain", ((SurveyBlock) again.elements().get(0)).getKind());
        assertTrue(again.notes().stream().anyMatch(note -> note.english().contains("has the same points as")
                && note.english().contains("remove the one")),
                again.notes().toString());
    }

    @Test
    void accuracyDayAndDatumAreNeverAssumed() {
        Optional<String> day = Optional.of("2026-05-20");
        OptionalDouble one = OptionalDouble.of(1);
        OptionalDouble none = OptionalDouble.empty();
        assertTrue(refusal(GRID, origin(day, none, one, Optional.of(DATUM))).contains("--horizontal-accuracy-m"));
        assertTrue(refusal(GRID, origin(day, one, none, Optional.of(DATUM))).contains("--vertical-accuracy-m"));
        assertTrue(refusal(GRID, origin(Optional.empty(), one, one, Optional.of(DATUM))).contains("--date"));
        assertTrue(refusal(GRID, origin(day, one, one, Optional.empty())).contains("--vertical-datum"));
        assertTrue(refusal(GRID, origin(day, one, one, Optional.of("EGM96"))).contains("'EGM96', which is not that of the aerodrome"));
    }

    @Test
    void terrainBecomesNoElements() throws ExchangeException {
        Project project = Demo.project();
        ExchangeException said = assertThrows(ExchangeException.class, () -> Surveys.groundLevels(project, GRID, whole()));
        assertEquals(1, said.messages().size());
        assertTrue(said.getMessage().contains("--as obstacle-block"), said.getMessage());
        assertEquals(30, Surveys.obstacles(project, GRID, whole()).points().orElseThrow().count());
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "cellsize 10; cellsize 0.05; neither metres nor degrees",
        "cellsize 10; cellsize NaN; cellsize: 'NaN' is not a number",
        "cellsize 10; cellsize -10; neither metres nor degrees",
        "ncols 2; ncols 2.5; ncols is 2.5",
        "ncols 2; ncols 900000000; has 900000000 by 2 cells",
        "ncols 2; ncols 11000000; has 11000000 by 2 cells",
        "ncols 2; rows 2; gives no ncols",
        "ncols 2; dx 10 ncols 2; gives no ncols",
        "nrows 2; ncols 2; gives ncols twice",
        "nrows 2; nrows 3; ends before its last row",
        "nrows 2; nrows 1; goes on after its 1 row of 2 cells",
        "xllcorner; yllcenter; gives neither xllcorner nor xllcenter",
        "nrows 2; yllcenter 7 nrows 2; gives both yllcorner and yllcenter",
        "100 101; -9999 101; 1 of its 4 cells hold no elevation",
        "100 101; 1e5 101; which no place on Earth has",
        "100 101; 100 high; elevation: 'high' is not a number",
        "100 101; 0 101; stands at an elevation of 0 m",
        "5242800; 9242800; km from the aerodrome"})
    void whatIsNoTerrainIsRefused(String what, String with, String reason) throws IOException {
        String text = HEAD + "100 101\n102 103\n";
        assertTrue(text.contains(what), what);
        String said = refusal(file(text.replaceFirst(what, with)), whole());
        assertTrue(said.contains(reason), said);
    }

    @Test
    void aNameForNoElevationIsHonoured() throws IOException {
        String said = refusal(file(HEAD + "NODATA_value 103\n100 101\n102 103\n"), whole());
        assertTrue(said.contains("1 of its 4 cells"), said);
    }

    /** Cells of 0.0001 degrees: the first stands in the north-west, half a cell inside the corners. */
    @Test
    void smallCellsAreDegrees() throws Exception {
        Path file = file("ncols 2\nnrows 1\nxllcorner -11.92\nyllcorner 47.30\ncellsize 0.0001\n100 101\n");
        SurveyPoints points = points(Demo.project(), file);
        assertArrayEquals(new double[] {47.30005, -11.91995, 47.30005, -11.91985},
                new double[] {points.north()[0], points.east()[0], points.north()[1], points.east()[1]}, 1e-9);
    }
}
