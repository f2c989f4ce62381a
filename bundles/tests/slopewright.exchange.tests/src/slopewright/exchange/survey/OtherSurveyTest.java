package slopewright.exchange.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.exchange.Demo;
import slopewright.exchange.ExchangeException;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.siting.site.AerodromePlaces;
import slopewright.siting.site.SiteFrame;

/** Surveys in files that other programs wrote, see the note beside them. */
class OtherSurveyTest {

    private static final Path OTHERS = Path.of(System.getProperty("slopewright.root"), "bundles", "tests",
            "slopewright.exchange.tests", "src", "others");

    @TempDir
    private Path folder;

    private static SurveyReading read(Path file, Optional<String> grid) throws ExchangeException {
        SurveyOrigin origin = new SurveyOrigin("survey", Optional.empty(), grid, OptionalDouble.empty(), OptionalDouble.empty(),
                SurveyHeights.AS_STATED);
        return SurveyReading.of(Demo.project(), file, origin, Optional.empty(), SurveyReading.Form.OBSTACLES);
    }

    private static List<Obstacle> obstacles(SurveyReading reading) {
        return reading.elements().stream().map(Obstacle.class::cast).toList();
    }

    /** 2.92 degrees west of the middle of the zone at 47.3 north, the grid's north lies 2.92 x sin 47.3 = 2.15 degrees off, by hand. */
    @Test
    void whatADrawingLeavesOpenIsSaid() throws Exception {
        Path file = Path.of(System.getProperty("slopewright.root"), "demo-data/harrow-vale/survey/obstacles-utm29.dxf");
        List<String> said = Surveys.english(read(file, Optional.of("EPSG:32629")).notes());
        assertEquals(3, said.size(), said.toString());
        assertEquals("the drawing names no unit ($INSUNITS); its coordinates and elevations are taken as metres", said.get(0));
        assertTrue(said.get(1).startsWith("its metres are those of EPSG:32629, whose north lies 2.15° west of true north"), said.get(1));
        assertEquals(Surveys.NO_DATUM, said.get(2));
    }

    /** GDAL wrote east 279000, 279050 and 279100 of EPSG:32629, a point at 120.5 m, and an area as a hatch, which is no survey. */
    @Test
    void lightPolylinesAreRead() throws Exception {
        SurveyReading reading = read(OTHERS.resolve("light.dxf"), Optional.of("EPSG:32629"));
        assertEquals(List.of(), reading.refused());
        Obstacle hedge = obstacles(reading).get(0);
        assertEquals("HEDGE 1", hedge.getName());
        assertEquals(ObstacleKind.LINE, hedge.getKind());
        assertEquals(3, hedge.getPlaces().size());
        assertEquals(101.5, hedge.getTopElevationM());
        assertEquals(120.5, obstacles(reading).get(1).getTopElevationM());
        assertTrue(Surveys.english(reading.notes()).contains("1 entities HATCH skipped"), reading.notes().toString());
        SiteFrame.LatLon first = AerodromePlaces.of(Demo.project().getAerodrome()).latLon(hedge.getPlaces().get(0)).orElseThrow();
        // 279000 E 5242800 N by GDAL 3.6.2 (gdaltransform): 47.3013647 N, 11.9234954 W
        assertEquals(47.3013647, first.latitudeDeg(), 1e-6);
        assertEquals(-11.9234954, first.longitudeDeg(), 1e-6);
    }

    @Test
    void aLightPolylineWithArcsOrMissingVerticesIsRefused() throws Exception {
        String text = Files.readString(OTHERS.resolve("light.dxf"));
        Path arcs = Files.writeString(folder.resolve("arcs.dxf"), text.replace("AcDbPolyline\n", "AcDbPolyline\n 42\n0.5\n"));
        assertTrue(read(arcs, Optional.of("EPSG:32629")).refused().get(0).english().contains("has arcs"));
        Path fewer = Files.writeString(folder.resolve("fewer.dxf"), text.replace(" 90\n3\n", " 90\n4\n"));
        assertTrue(read(fewer, Optional.of("EPSG:32629")).refused().get(0).english().contains("says that it has 4 vertices"));
    }

    /** The rows as they were typed: the third has no longitude. */
    @Test
    void aSpreadsheetIsReadAsItsColumnsAreTaken() throws Exception {
        Path file = OTHERS.resolve("obstacles.xlsx");
        TablePreview preview = TablePreview.of(file);
        assertEquals(List.of("Nr", "Designation", "Latitude", "Longitude", "Top"), preview.columns());
        assertEquals(List.of("X2", "Mast & wire", "47.3019", "-11.9201", "99"), preview.rows().get(1));
        SurveyOrigin origin = new SurveyOrigin("survey", Optional.empty(), Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(),
                SurveyHeights.AS_STATED);
        SurveyReading reading = SurveyReading.of(Demo.project(), file, origin, Optional.of(preview.guess()),
                SurveyReading.Form.OBSTACLES);
        assertEquals(List.of("X1", "X2", "X4"), obstacles(reading).stream().map(Obstacle::getId).toList());
        assertEquals(97.125, obstacles(reading).get(2).getTopElevationM());
        assertEquals(47.3025, obstacles(reading).get(2).getPlaces().get(0).getLatitudeDeg());
        assertTrue(reading.refused().get(0).english().contains("xlsx:4: longitudeDeg: 'none' is not a number"),
                reading.refused().toString());
    }

    @Test
    void aSpreadsheetCutOrChangedAnywhereIsReadOrRefused() throws Exception {
        byte[] whole = Files.readAllBytes(OTHERS.resolve("obstacles.xlsx"));
        for (int i = 0; i < whole.length; i += 11) {
            for (byte[] broken : List.of(Arrays.copyOf(whole, i), changed(whole, i))) {
                Path file = Files.write(folder.resolve("broken.xlsx"), broken);
                try {
                    TablePreview.of(file);
                    SurveyFile.read(file, shape -> assertTrue(shape.line() > 0));
                } catch (ExchangeException e) {
                    assertTrue(e.getMessage().contains("broken.xlsx"), e.getMessage());
                }
            }
        }
    }

    private static byte[] changed(byte[] whole, int at) {
        byte[] changed = whole.clone();
        changed[at] ^= (byte) 0x55;
        return changed;
    }
}
