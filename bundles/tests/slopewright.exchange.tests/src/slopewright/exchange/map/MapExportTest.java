package slopewright.exchange.map;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

import slopewright.evaluation.ProjectEvaluation;
import slopewright.exchange.Demo;
import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyHeights;
import slopewright.exchange.survey.SurveyOrigin;
import slopewright.exchange.survey.SurveyReading;
import slopewright.exchange.survey.Surveys;
import slopewright.model.ApproachAid;
import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;

/** The demo on a map. Positions are compared with geodesics of GeographicLib, heights with sums done by hand. */
class MapExportTest {

    @TempDir
    private Path folder;

    private static final double THRESHOLD_09_LAT = 47.3;
    private static final double THRESHOLD_09_LON = -11.9;

    private static MapDocument demo() {
        return map(Demo.project(), 5000);
    }

    private static MapDocument map(Project project, double beamM) {
        ProjectEvaluation evaluation = Demo.evaluate(project);
        return MapExport.of(evaluation, evaluation.aids(), beamM, Demo.ENGLISH);
    }

    private static MapFeature feature(MapDocument map, String id) {
        return map.features().stream().filter(feature -> feature.id().equals(id)).findFirst().orElseThrow(() -> new AssertionError(id));
    }

    private static GeodesicData from09(double alongM, double rightM) {
        return Geodesic.WGS84.Direct(THRESHOLD_09_LAT, THRESHOLD_09_LON, 92 + Math.toDegrees(Math.atan2(rightM, alongM)),
                Math.hypot(alongM, rightM));
    }

    private static void at(GeodesicData place, double elevationM, MapPosition position) {
        double apart = Geodesic.WGS84.Inverse(place.lat2, place.lon2, position.latitudeDeg(), position.longitudeDeg()).s12;
        assertEquals(0, apart, 0.0005, "metres apart");
        assertEquals(elevationM, position.elevationM(), 0.0005);
    }

    @Test
    void aUnitStandsAtItsLens() {
        MapFeature unit = feature(demo(), "light-unit-1");
        at(from09(330.462, -37.5), 87.131, unit.positions().get(0));
        assertEquals("3°35'", unit.properties().get("setting"));
        assertEquals(272.0, (double) unit.properties().get("azimuthTrueDeg"), 1e-9);
        assertEquals("four-unit-row", unit.properties().get("family"));
        assertEquals(true, unit.properties().get("frangible"));
    }

    /** 5000 m out at 3.583333 degrees: 5000 tan = 313.1131 m, and 5000 squared over twice 6371008.8 m = 1.9620 m of curvature. */
    @Test
    void aSectorEdgeRisesAlongTheAxisWithTheCurvature() {
        MapFeature edge = feature(demo(), "light-unit-1.edge-1");
        double rise = 5000 * Math.tan(Math.toRadians(3.583333));
        assertEquals(313.1131, rise, 0.0001);
        MapPosition end = edge.positions().get(edge.positions().size() - 1);
        at(from09(330.462 - 5000, -37.5), 87.131 + rise + 5000.0 * 5000 / 2 / 6371008.8, end);
        assertEquals("red", edge.properties().get("below"));
        assertEquals("white", edge.properties().get("above"));
    }

    /** Seen in the landing direction, 8 degrees to each side of the axis. */
    @Test
    void aBeamReachesToItsLimits() {
        MapFeature beam = feature(demo(), "light-unit-1.beam");
        double side = 5000 * Math.tan(Math.toRadians(8));
        double rise = 5000 * Math.tan(Math.toRadians(3.583333)) + (5000.0 * 5000 + side * side) / 2 / 6371008.8;
        at(from09(330.462 - 5000, -37.5 - side), 87.131 + rise, beam.positions().get(10));
        assertTrue(beam.positions().stream().anyMatch(position -> near(position, from09(330.462 - 5000, -37.5 + side))));
    }

    private static boolean near(MapPosition one, GeodesicData place) {
        return Geodesic.WGS84.Inverse(place.lat2, place.lon2, one.latitudeDeg(), one.longitudeDeg()).s12 < 0.001;
    }

    /** The surface of the feature's own facts, its corners reckoned here: 15 per cent to each side, rising outward. */
    @Test
    void aSurfaceHasTheCornersOfItsFacts() {
        MapFeature surface = feature(demo(), "approach-aid-1.surface");
        double start = (double) surface.properties().get("startAlongM");
        double low = (double) surface.properties().get("startElevationM");
        double inner = (double) surface.properties().get("innerEdgeM") / 2;
        double length = (double) surface.properties().get("lengthM");
        double outer = inner + length * (double) surface.properties().get("divergencePercent") / 100;
        double high = low + length * Math.tan(Math.toRadians((double) surface.properties().get("slopeDeg")));
        assertEquals(15.0, (double) surface.properties().get("divergencePercent"), 1e-9);
        at(from09(start, -inner), low, surface.positions().get(0));
        for (double side : new double[] {-outer, outer}) {
            GeodesicData corner = from09(start - length, side);
            MapPosition found = surface.positions().stream().filter(position -> near(position, corner)).findFirst().orElseThrow();
            assertEquals(high, found.elevationM(), 0.0005);
        }
    }

    /** Windle mast stands where it stands: the excess is reckoned from its place, its top and both accuracies. */
    @Test
    void anObstacleTellsHowItStandsAgainstTheSurfaces() {
        MapDocument map = demo();
        MapFeature mast = feature(map, "obstacle-2");
        GeodesicData line = Geodesic.WGS84.Inverse(THRESHOLD_09_LAT, THRESHOLD_09_LON, 47.298024318, -11.934499064);
        double along = line.s12 * Math.cos(Math.toRadians(line.azi1 - 92));
        MapFeature surface = feature(map, "approach-aid-1.surface");
        double out = (double) surface.properties().get("startAlongM") - along - 1.0;
        double limit = (double) surface.properties().get("startElevationM") + out * Math.tan(Math.toRadians((double) surface.properties()
                .get("slopeDeg")));
        assertEquals(148.4 + 0.5 - limit, (double) mast.properties().get("excessM"), 0.001);
        assertEquals("approach-aid-1", mast.properties().get("surfaceOf"));
        assertEquals(148.4 + 0.5 - limit > 0, mast.properties().get("penetrates"));
    }

    @Test
    void aRaisedObstaclePenetratesAndAnUnknownOneIsNotCalledClear() {
        Project project = Demo.project();
        Obstacle mast = project.getAerodrome().getObstacles().get(1);
        mast.setTopElevationM(mast.getTopElevationM() + 100);
        assertEquals(true, feature(map(project, 1000), "obstacle-2").properties().get("penetrates"));
        mast.setTopElevationM(null);
        mast.getPlaces().get(0).setElevationM(null);
        MapFeature unknown = feature(map(project, 1000), "obstacle-2");
        assertNull(unknown.properties().get("penetrates"));
        assertTrue(unknown.properties().get("comparison").toString().contains("the top elevation of obstacle Windle mast is missing"));
        assertFalse(unknown.isHigh());
    }

    /**
     * Two points of a survey block on the centre line of runway 09, 1000 m and 2000 m out, and one beside the runway. The first stands
     * through the surface by what is reckoned here, the second governs; the third is not written.
     */
    @Test
    void pointsOfSurveyBlocksThatGovernOrStandThroughAreShown() throws IOException, ExchangeException, ProjectFileException {
        Path file = folder.resolve("p.slopewright");
        GeodesicData near = from09(-1000, 0);
        GeodesicData far = from09(-2000, 0);
        GeodesicData beside = from09(800, 100);
        Path survey = Files.writeString(folder.resolve("s.csv"), "id,latitudeDeg,longitudeDeg,topElevationM\n"
                + String.format(Locale.ROOT, "near,%.10f,%.10f,130%nfar,%.10f,%.10f,180%nbeside,%.10f,%.10f,300%n", near.lat2, near.lon2,
                        far.lat2, far.lon2, beside.lat2, beside.lon2));
        Project made = Demo.project();
        SurveyReading block = Surveys.block(made, survey, new SurveyOrigin("test", Optional.empty(), Optional.empty(),
                OptionalDouble.of(0), OptionalDouble.of(0.5), SurveyHeights.AS_STATED));
        Files.write(folder.resolve(Surveys.fileName(block)), Surveys.bytes(block));
        ProjectFile.save(made, file);
        MapDocument map = map(ProjectFile.load(file), 5000);
        MapFeature surface = feature(map, "approach-aid-1.surface");
        double start = (double) surface.properties().get("startAlongM");
        double low = (double) surface.properties().get("startElevationM");
        double rise = Math.tan(Math.toRadians((double) surface.properties().get("slopeDeg")));
        String id = made.getSurveyBlocks().get(0).getId();
        MapFeature first = feature(map, id + ".point-1");
        assertEquals(130.5 - low - (start + 1000) * rise, (double) first.properties().get("excessM"), 0.001);
        assertEquals(true, first.properties().get("penetrates"));
        assertEquals(false, first.properties().get("governs"));
        MapFeature second = feature(map, id + ".point-2");
        double excess = 180.5 - low - (start + 2000) * rise;
        assertEquals(excess, (double) second.properties().get("excessM"), 0.001);
        assertEquals(true, second.properties().get("governs"));
        assertEquals("approach-aid-1", second.properties().get("surfaceOf"));
        at(far, 180, second.positions().get(0));
        assertEquals(-excess, (double) surface.properties().get("marginM"), 0.001);
        assertTrue(surface.properties().get("governing").toString().endsWith("point far"), surface.properties().toString());
        assertEquals(2, map.features().stream().filter(feature -> "survey-point".equals(feature.kind())).count());
    }

    /** A margin beside something that was not compared is not the whole truth. */
    @Test
    void whatWasNotComparedStandsWithTheSurface() {
        Project project = Demo.project();
        assertFalse(feature(map(project, 5000), "approach-aid-1.surface").properties().containsKey("notCompared"));
        project.getAerodrome().getObstacles().stream().filter(obstacle -> "Windle mast".equals(obstacle.getName()))
                .forEach(obstacle -> obstacle.setVerticalAccuracyM(null));
        assertEquals("Windle mast", feature(map(project, 5000), "approach-aid-1.surface").properties().get("notCompared"));
    }

    /** A line that no aerodrome has is named and left out; it takes no time and no room. */
    @Test
    void aRunwayOfAnotherWorldIsNamedAndLeftOut() {
        Project project = Demo.project();
        project.getAerodrome().getRunways().get(0).setLengthM(1e15);
        MapDocument map = map(project, 5000);
        assertTrue(map.notes().stream().anyMatch(note -> note.startsWith("runway-1 is not shown: a line of it is")),
                map.notes().toString());
        assertEquals("APAPI 03, unit B", feature(map, "light-unit-9").name());
    }

    /** A width below zero, and settings that no surface can have, leave out the aid that has them, named, and nothing else. */
    @Test
    void numbersThatNothingCanBeWorkedOutOfAreNamed() {
        Project project = Demo.project();
        List<ApproachAid> aids = Projects.aids(project);
        aids.get(0).getUnits().get(0).getTransitions().get(0).setWidthMinutes(-3.0);
        aids.get(1).getUnits().forEach(unit -> unit.setSettingDeg(80.0));
        MapDocument map = map(project, 5000);
        assertTrue(map.notes().stream().anyMatch(note -> note.startsWith("approach-aid-1 is not shown: ")), map.notes().toString());
        assertTrue(map.notes().stream().anyMatch(note -> note.startsWith("approach-aid-2 is not shown: ")), map.notes().toString());
        assertTrue(map.features().stream().noneMatch(each -> each.id().equals("light-unit-1") || each.id().equals("light-unit-5")));
        assertEquals("APAPI 03, unit B", feature(map, "light-unit-9").name());
        assertNull(feature(map, "obstacle-2").properties().get("penetrates"), "what was not compared is not called clear");
    }

    @Test
    void geoJsonIsWellFormedNumbersInOrderRingsLeftHand() throws IOException {
        byte[] bytes = GeoJsonFile.bytes(demo());
        assertArrayEquals(bytes, GeoJsonFile.bytes(demo()), "the same bytes again");
        JsonNode root = new ObjectMapper().readTree(bytes);
        assertEquals("FeatureCollection", root.get("type").asText());
        assertEquals("Harrow Vale local mean sea level (invented)", root.get("verticalDatum").asText());
        assertEquals(52.4, root.get("geoidOffsetM").asDouble());
        assertEquals("WGS84", root.get("surveyedIn").asText());
        assertTrue(root.has("coordinateEpoch") && root.has("horizontalAccuracyM"), "named where they are not known too");
        Set<String> ids = new HashSet<>();
        int rings = 0;
        for (JsonNode feature : root.get("features")) {
            assertTrue(ids.add(feature.get("id").asText()));
            if (feature.get("geometry").get("type").asText().equals("Polygon")) {
                JsonNode ring = feature.get("geometry").get("coordinates").get(0);
                assertEquals(ring.get(0), ring.get(ring.size() - 1));
                assertTrue(twiceArea(ring) > 0, feature.get("id").asText());
                rings++;
            }
        }
        assertEquals(11 + 4 + 2 + 2 + 3, rings, "beams, surfaces, runways, parts of the helipad, obstacles that are areas");
        JsonNode unit = root.get("features").get(0).get("geometry").get("coordinates");
        assertEquals(-11.895615837, unit.get(0).asDouble());
        assertEquals(47.300233276, unit.get(1).asDouble());
        assertEquals(87.131, unit.get(2).asDouble());
    }

    private static double twiceArea(JsonNode ring) {
        double twice = 0;
        for (int i = 1; i < ring.size(); i++) {
            double x0 = ring.get(i - 1).get(0).asDouble() - ring.get(0).get(0).asDouble();
            double y0 = ring.get(i - 1).get(1).asDouble() - ring.get(0).get(1).asDouble();
            double x1 = ring.get(i).get(0).asDouble() - ring.get(0).get(0).asDouble();
            double y1 = ring.get(i).get(1).asDouble() - ring.get(0).get(1).asDouble();
            twice += x0 * y1 - x1 * y0;
        }
        return twice;
    }

    @Test
    void kmlIsReadByAnotherReader() throws ParserConfigurationException, SAXException, IOException {
        byte[] bytes = KmlFile.bytes(demo());
        assertArrayEquals(bytes, KmlFile.bytes(demo()), "the same bytes again");
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        Document document = factory.newDocumentBuilder().parse(new ByteArrayInputStream(bytes));
        assertEquals("http://www.opengis.net/kml/2.2", document.getDocumentElement().getNamespaceURI());
        NodeList marks = document.getElementsByTagName("Placemark");
        assertEquals(demo().features().size(), marks.getLength());
        NodeList modes = document.getElementsByTagName("altitudeMode");
        for (int i = 0; i < modes.getLength(); i++) {
            assertEquals("absolute", modes.item(i).getTextContent());
        }
        assertTrue(document.getElementsByTagName("coordinates").item(0).getTextContent().startsWith("-11.895615837,47.300233276,87.131"));
    }

    /** The lens of unit D stands at 87.131 m; the datum is entered as 52.4 m above the ellipsoid: 139.531 m. The geoid is named. */
    @Test
    void aPackedKmlHasIconsAndSaysAboveWhatItsHeightsAre() throws IOException {
        byte[] bytes = KmlFile.packed(demo());
        assertArrayEquals(bytes, KmlFile.packed(demo()), "the same bytes again");
        Map<String, byte[]> files = new HashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                files.put(entry.getName(), zip.readAllBytes());
            }
        }
        String text = new String(files.get("doc.kml"), StandardCharsets.UTF_8);
        Matcher icon = Pattern.compile("<href>([^<]*)</href>").matcher(text);
        int icons = 0;
        while (icon.find()) {
            assertEquals(48, ImageIO.read(new ByteArrayInputStream(files.get(icon.group(1)))).getWidth(), icon.group(1));
            icons++;
        }
        assertEquals(files.size() - 1, icons);
        assertTrue(text.contains("EGM96") && text.contains("52.4 m above the ellipsoid"), "the geoid is named");
        assertTrue(text.replaceAll("\\s+", "").contains("<Dataname=\"heightAboveEllipsoidM\"><value>139.531</value>"), "true height");
    }

    @Test
    void aLocalPlaneHasNoPlaceOnAMap() {
        Project project = Demo.project();
        project.getAerodrome().setCoordinateReference("local");
        SitingException thrown = assertThrows(SitingException.class, () -> MapExport.of(Demo.evaluate(project), List.of(), 5000,
                Demo.ENGLISH));
        assertTrue(thrown.getMessage().contains("local plane"), thrown.getMessage());
    }
}
