package slopewright.exchange.map;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.Raster;
import java.io.ByteArrayInputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.MadeFrom;
import slopewright.exchange.Demo;
import slopewright.exchange.survey.SurveyHeights;
import slopewright.exchange.survey.SurveyOrigin;
import slopewright.exchange.survey.SurveyReading;
import slopewright.exchange.survey.Surveys;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.io.ProjectFile;
import slopewright.siting.SitingException;

/**
 * Margins in cells. Files are read by the TIFF reader of Java, places come from geodesics of GeographicLib, margins from the slope of the
 * surface by hand.
 */
class MarginRasterTest {

    private static final double THRESHOLD_09_LAT = 47.3;
    private static final double THRESHOLD_09_LON = -11.9;
    private static final double BEARING_09 = 92;

    @TempDir
    private Path folder;

    /** A place from the threshold of runway 09, metres in the landing direction. */
    private static GeodesicData from09(double alongM) {
        return Geodesic.WGS84.Direct(THRESHOLD_09_LAT, THRESHOLD_09_LON, BEARING_09, alongM);
    }

    private static AidEvaluation aid(Project project) {
        return Demo.evaluate(project).aids().get(0);
    }

    private static MarginRaster raster(Project project, double cellM) {
        AidEvaluation aid = aid(project);
        return MarginRaster.of(aid, cellM, MadeFrom.of(project, aid.rules()), Demo.ENGLISH);
    }

    private static Raster read(MarginRaster raster) throws Exception {
        ImageReader reader = ImageIO.getImageReadersByFormatName("tiff").next();
        Raster cells;
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(GeoTiffFile.bytes(raster)))) {
            reader.setInput(in);
            cells = reader.read(0).getRaster();
        }
        assertEquals(raster.columns(), cells.getWidth());
        assertEquals(raster.rows(), cells.getHeight());
        return cells;
    }

    private static float at(Raster cells, MarginRaster raster, GeodesicData place) {
        return cells.getSampleFloat((int) ((place.lon2 - raster.westDeg()) / raster.longitudeStepDeg()),
                (int) ((raster.northDeg() - place.lat2) / raster.latitudeStepDeg()), 0);
    }

    private static long numbers(Raster cells) {
        long count = 0;
        for (float cell : cells.getSamples(0, 0, cells.getWidth(), cells.getHeight(), 0, (float[]) null)) {
            count += Float.isNaN(cell) ? 0 : 1;
        }
        return count;
    }

    private static double marginM(Project project, double outM, double topM) {
        ProtectionSurface surface = aid(project).obstacles().orThrow().surface();
        double datum = aid(project).frame().orThrow().originElevationM();
        double rise = Math.tan(Math.toRadians(surface.slopeDeg()));
        return datum + surface.startHeightM() + (surface.startAlongM() + outM) * rise - topM;
    }

    /** Adds an obstacle with a top of 125 m whose places lie so far from its middle. */
    private static void add(Project project, ObstacleKind kind, GeodesicData middle, double awayM, double... bearingsDeg) {
        Obstacle obstacle = SlopewrightFactory.eINSTANCE.createObstacle();
        obstacle.setId("shape");
        obstacle.setKind(kind);
        obstacle.setTopElevationM(125.0);
        obstacle.setHorizontalAccuracyM(1e-9);
        obstacle.setVerticalAccuracyM(1e-9);
        for (double bearing : bearingsDeg) {
            GeodesicData end = Geodesic.WGS84.Direct(middle.lat2, middle.lon2, bearing, awayM);
            Place place = SlopewrightFactory.eINSTANCE.createPlace();
            place.setLatitudeDeg(end.lat2);
            place.setLongitudeDeg(end.lon2);
            obstacle.getPlaces().add(place);
        }
        project.getAerodrome().getObstacles().add(obstacle);
    }

    /** Two points in one cell, the lower first, one in another: each cell has its least, all others none. */
    @Test
    void aCellHasTheLeastOfItsPointsAndNoOtherHasANumber() throws Exception {
        Project made = Demo.project();
        made.getAerodrome().getObstacles().clear();
        StringBuilder rows = new StringBuilder("id,latitudeDeg,longitudeDeg,topElevationM\n");
        GeodesicData near = from09(-1000);
        GeodesicData far = from09(-2000);
        List.of("a,%1$.10f,%2$.10f,110%n", "b,%1$.10f,%2$.10f,130%n", "c,%1$.10f,%2$.10f,129%n")
                .forEach(row -> rows.append(String.format(Locale.ROOT, row, near.lat2, near.lon2)));
        rows.append(String.format(Locale.ROOT, "d,%.10f,%.10f,120%n", far.lat2, far.lon2));
        rows.append(String.format(Locale.ROOT, "beside,%.10f,%.10f,300%n", THRESHOLD_09_LAT + 0.1, THRESHOLD_09_LON));
        Path survey = Files.writeString(folder.resolve("s.csv"), rows);
        SurveyReading block = Surveys.block(made, survey, new SurveyOrigin("test", Optional.empty(), Optional.empty(),
                OptionalDouble.of(1e-6), OptionalDouble.of(0.5), SurveyHeights.AS_STATED));
        Files.write(folder.resolve(Surveys.fileName(block)), Surveys.bytes(block));
        Path file = folder.resolve("p.slopewright");
        ProjectFile.save(made, file);
        Project project = ProjectFile.load(file);
        MarginRaster raster = raster(project, 25);
        Raster cells = read(raster);
        assertEquals(marginM(project, 1000, 130.5), at(cells, raster, near), 0.001);
        assertEquals(marginM(project, 2000, 120.5), at(cells, raster, far), 0.001);
        assertEquals(2, numbers(cells));
    }

    /** A wall of 200 m across the centre line, in cells of 10 m: every cell of it, and no more than its neighbours. */
    @Test
    void aLineCountsInEveryCellThatItCovers() throws Exception {
        Project project = Demo.project();
        project.getAerodrome().getObstacles().clear();
        GeodesicData middle = from09(-1500);
        add(project, ObstacleKind.LINE, middle, 100, 2, 182);
        MarginRaster raster = raster(project, 10);
        Raster cells = read(raster);
        double expected = marginM(project, 1500, 125);
        for (int north = -99; north < 100; north += 3) {
            GeodesicData place = Geodesic.WGS84.Direct(middle.lat2, middle.lon2, 2, north);
            assertEquals(expected, at(cells, raster, place), 0.01, "at " + north);
        }
        long found = numbers(cells);
        assertTrue(found >= 20 && found <= 2 * 22, String.valueOf(found));
    }

    /** A ring of 100 m by 100 m in cells of 10 m covers its inside too. */
    @Test
    void anAreaCountsInEveryCellThatItCovers() throws Exception {
        Project project = Demo.project();
        project.getAerodrome().getObstacles().clear();
        GeodesicData middle = from09(-1500);
        add(project, ObstacleKind.AREA, middle, 50 * Math.sqrt(2), 47, 137, 227, 317);
        MarginRaster raster = raster(project, 10);
        Raster cells = read(raster);
        double expected = marginM(project, 1450, 125);
        for (int away = 0; away < 48; away += 4) {
            for (int bearing = 0; bearing < 360; bearing += 30) {
                GeodesicData place = Geodesic.WGS84.Direct(middle.lat2, middle.lon2, bearing, away);
                assertEquals(expected, at(cells, raster, place), 0.01, away + " m, " + bearing);
            }
        }
        long found = numbers(cells);
        assertTrue(found >= 100 && found <= 12 * 12, String.valueOf(found));
    }

    /** A ring of 2000 km around the surface: every cell whose middle lies on the surface, in no time. */
    @Test
    void anAreaIsFollowedNoFartherThanTheSurfaceReaches() {
        Project project = Demo.project();
        project.getAerodrome().getObstacles().clear();
        add(project, ObstacleKind.AREA, from09(-1500), 1_000_000, 47, 137, 227, 317);
        MarginRaster raster = assertTimeout(Duration.ofSeconds(60), () -> raster(project, 50));
        ProtectionSurface surface = aid(project).obstacles().orThrow().surface();
        double area = surface.lengthM() * (surface.innerEdgeM() + surface.lengthM() * surface.divergence());
        long known = IntStream.range(0, raster.rows() * raster.columns())
                .filter(cell -> !Float.isNaN(raster.marginM(cell / raster.columns(), cell % raster.columns()))).count();
        // cells are wider than asked for by less than a hundredth, and those at the edge count whole
        double cells = area / (50 * 50);
        assertTrue(known > 0.99 * cells && known < 1.1 * cells, known + " of " + cells);
    }

    @Test
    void theFileSaysWhatItIsAndWhere() {
        MarginRaster raster = raster(Demo.project(), 10);
        byte[] bytes = GeoTiffFile.bytes(raster);
        String text = new String(bytes, StandardCharsets.UTF_8);
        assertTrue(text.contains("A cell without a number was not compared; it is not clear."));
        assertTrue(text.contains("A design aid"));
        ByteBuffer file = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
        int directory = file.getInt(4);
        int last = 0;
        for (int i = 0; i < file.getShort(directory); i++) {
            int tag = file.getShort(directory + 2 + 12 * i) & 0xFFFF;
            assertTrue(tag > last, "fields stand in the order of their numbers: " + tag);
            last = tag;
        }
    }

    @Test
    void whereNothingStandsEveryCellIsWithoutANumberAndTheFileSaysWhy() throws Exception {
        Project bare = Demo.project();
        bare.getAerodrome().getObstacles().clear();
        MarginRaster raster = raster(bare, 10);
        assertEquals(0, numbers(read(raster)));
        assertTrue(raster.notes().toString().contains("nothing that was compared"), raster.notes().toString());
    }

    @Test
    void whatCannotBeWrittenIsRefused() {
        assertTrue(assertThrows(SitingException.class, () -> raster(Demo.project(), 0.5)).getMessage().contains("make them larger"));
        Project plane = Demo.project();
        plane.getAerodrome().setCoordinateReference("LOCAL");
        assertThrows(SitingException.class, () -> raster(plane, 10));
    }

    /** What nobody knows how well it was surveyed is left out, and named, where it stands below. */
    @Test
    void whatWasNotComparedIsNamed() {
        Project project = Demo.project();
        Obstacle vague = aid(project).obstacles().orThrow().governing().orElseThrow().obstacle().orElseThrow();
        vague.setHorizontalAccuracyM(null);
        assertTrue(raster(project, 10).notes().stream().anyMatch(note -> note.contains("is not compared")), raster(project, 10).notes()
                .toString());
    }
}
