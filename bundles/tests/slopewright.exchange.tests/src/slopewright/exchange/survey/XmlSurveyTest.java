package slopewright.exchange.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.exchange.Demo;
import slopewright.exchange.ExchangeException;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;

/** LandXML and AIXM, typed by hand after their schemas; no program at hand writes them. */
class XmlSurveyTest {

    private static final String LAND = """
            <?xml version="1.0" encoding="UTF-8"?>
            <LandXML xmlns="http://www.landxml.org/schema/LandXML-1.2" version="1.2" date="2026-05-20" time="08:00:00">
              <Units><Imperial areaUnit="squareFoot" linearUnit="foot" volumeUnit="cubicFeet"/></Units>
              <CoordinateSystem epsgCode="32629"/>
              <CgPoints>
                <CgPoint name="T1" desc="Mast">17200787.401575 915354.330709 400</CgPoint>
                <CgPoint name="T2">17200787.401575 915354.330709 high</CgPoint>
                <CgPoint pntRef="T1"/>
              </CgPoints>
              <PlanFeatures><PlanFeature name="Wall"><CoordGeom><IrregularLine>
                <PntList3D>17200787.401575 915354.330709 330 17200820.209974 915387.139108 331</PntList3D>
              </IrregularLine></CoordGeom></PlanFeature></PlanFeatures>
              <Surfaces><Surface name="ground"/></Surfaces>
            </LandXML>
            """;
    private static final String STRUCTURE = """
            <message:hasMember><aixm:VerticalStructure><aixm:timeSlice><aixm:VerticalStructureTimeSlice>
              <aixm:interpretation>%s</aixm:interpretation><aixm:name>%s</aixm:name>
              <aixm:part><aixm:VerticalStructurePart>%s%s</aixm:VerticalStructurePart></aixm:part>
            </aixm:VerticalStructureTimeSlice></aixm:timeSlice></aixm:VerticalStructure></message:hasMember>
            """;
    private static final String POINT = """
            <aixm:horizontalProjection_location><aixm:ElevatedPoint srsName="%s"><gml:pos>%s</gml:pos>
              <aixm:horizontalAccuracy uom="M">3</aixm:horizontalAccuracy><aixm:elevation uom="FT">350</aixm:elevation>
              <aixm:verticalAccuracy uom="M">1.5</aixm:verticalAccuracy></aixm:ElevatedPoint></aixm:horizontalProjection_location>
            """;
    private static final String LATITUDE_FIRST = "urn:ogc:def:crs:EPSG::4326";

    @TempDir
    private Path folder;

    private static String aixm(String... members) {
        return "<?xml version=\"1.0\"?>\n<message:AIXMBasicMessage xmlns:message=\"http://www.aixm.aero/schema/5.1/message\" "
                + "xmlns:aixm=\"http://www.aixm.aero/schema/5.1\" xmlns:gml=\"http://www.opengis.net/gml/3.2\">\n"
                + String.join("", members) + "</message:AIXMBasicMessage>\n";
    }

    private SurveyReading read(String text, String grid, SurveyHeights.Meaning meaning) throws IOException, ExchangeException {
        Path file = Files.writeString(folder.resolve("survey.xml"), text);
        SurveyOrigin origin = new SurveyOrigin("survey", Optional.empty(), Optional.ofNullable(grid), OptionalDouble.empty(),
                OptionalDouble.empty(), new SurveyHeights(meaning, OptionalDouble.empty()));
        return SurveyReading.of(Demo.project(), file, origin, Optional.empty(), SurveyReading.Form.OBSTACLES);
    }

    private static List<Obstacle> obstacles(SurveyReading reading) {
        return reading.elements().stream().map(Obstacle.class::cast).toList();
    }

    /** 400 ft are 121.92 m; 17200787.401575 ft and 915354.330709 ft are 5242800 m and 279000 m, whose place GDAL gives. */
    @Test
    void landXmlIsReadInItsUnit() throws Exception {
        SurveyReading reading = read(LAND, "EPSG:32629", SurveyHeights.Meaning.AS_STATED);
        Obstacle mast = obstacles(reading).get(0);
        assertEquals("T1", mast.getId());
        assertEquals("Mast", mast.getName());
        assertEquals(121.92, mast.getTopElevationM(), 1e-9);
        assertEquals(47.3013647, mast.getPlaces().get(0).getLatitudeDeg(), 1e-6);
        assertEquals(-11.9234954, mast.getPlaces().get(0).getLongitudeDeg(), 1e-6);
        Obstacle wall = obstacles(reading).get(1);
        assertEquals(ObstacleKind.LINE, wall.getKind());
        assertEquals("Wall", wall.getName());
        assertEquals(331 * 0.3048, wall.getTopElevationM(), 1e-9);
        assertEquals(1, reading.refusedCount());
        assertTrue(reading.refused().get(0).english().contains("survey.xml:7: position: 'high' is not a number"),
                reading.refused().toString());
        // 2.92 degrees west of its middle meridian: 2.92 sin 47.3 = 2.15; 221 km from it: 0.9996 (1 + (221 / 6384)^2 / 2) = 1.00020
        assertEquals(List.of("1 references to points skipped", "1 surfaces skipped", "its metres are those of EPSG:32629, whose north lies "
                + "2.15\u00b0 west of true north at its first place; 1000 m on it are 999.800 m on the ground there: both are taken into "
                + "account, and bearings that are entered are true ones", Surveys.NO_DATUM), Surveys.english(reading.notes()));
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {"linearUnit=\"foot\"; linearUnit=\"furlong\"; unit 'furlong'",
        "epsgCode=\"32629\"; epsgCode=\"32630\"; says that it is in EPSG:32630",
        "epsgCode=; verticalDatum=\"NAVD88\" epsgCode=; has elevations in 'NAVD88'",
        "<LandXML; <!DOCTYPE x><LandXML; survey.xml"})
    void whatLandXmlLeavesOpenOrSaysOtherwiseIsRefused(String text, String put, String reason) throws Exception {
        SurveyReading reading = read(LAND.replace(text, put), "EPSG:32629", SurveyHeights.Meaning.AS_STATED);
        assertTrue(reading.ending().isPresent());
        assertTrue(reading.ending().get().english().contains(reason), reading.ending().get().english());
    }

    @Test
    void lengthsOfNoUnitAreRefused() throws Exception {
        String text = LAND.replaceAll("<Imperial [^>]*>", "");
        SurveyReading reading = read(text, "EPSG:32629", SurveyHeights.Meaning.AS_STATED);
        assertEquals(0, reading.count());
        assertTrue(reading.refused().get(0).english().contains("before it names the unit"), reading.refused().toString());
    }

    /** 350 ft are 106.68 m. */
    @Test
    void structuresOfAixmAreObstacles() throws Exception {
        String text = aixm(STRUCTURE.formatted("BASELINE", "Chimney", "", POINT.formatted(LATITUDE_FIRST, "47.3019 -11.9201")),
                STRUCTURE.formatted("TEMPDELTA", "Crane", "", POINT.formatted(LATITUDE_FIRST, "47.3019 -11.9201")));
        SurveyReading reading = read(text, null, SurveyHeights.Meaning.AS_STATED);
        assertEquals(List.of(), reading.refused());
        Obstacle chimney = obstacles(reading).get(0);
        assertEquals("Chimney", chimney.getName());
        assertEquals(106.68, chimney.getTopElevationM(), 1e-9);
        assertEquals(3, chimney.getHorizontalAccuracyM());
        assertEquals(1.5, chimney.getVerticalAccuracyM());
        assertEquals(47.3019, chimney.getPlaces().get(0).getLatitudeDeg());
        assertEquals(1, obstacles(reading).size());
        assertEquals(List.of("1 states of the kind 'TEMPDELTA' skipped", Surveys.NO_DATUM), Surveys.english(reading.notes()));
    }

    /** An elevation beside an extent could be that of the top or of the ground, 30 m apart: nobody may guess. */
    @Test
    void anElevationBesideAnExtentIsNotGuessedAt() throws Exception {
        String text = aixm(STRUCTURE.formatted("BASELINE", "Chimney", "<aixm:verticalExtent uom=\"M\">30</aixm:verticalExtent>",
                POINT.formatted("http://www.opengis.net/def/crs/OGC/1.3/CRS84", "-11.9201 47.3019")));
        SurveyReading open = read(text, null, SurveyHeights.Meaning.AS_STATED);
        assertEquals(0, open.count());
        assertTrue(open.refused().get(0).english().contains("does not say whether"), open.refused().toString());
        assertEquals(106.68, obstacles(read(text, null, SurveyHeights.Meaning.TOP)).get(0).getTopElevationM(), 1e-9);
        assertEquals(136.68, obstacles(read(text, null, SurveyHeights.Meaning.GROUND)).get(0).getTopElevationM(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {"EPSG::4326; EPSG::3857; in the coordinate reference", "uom=\"FT\"; uom=\"FL\"; is no length",
        "47.3019 -11.9201; 47.3019; which are no pairs", "47.3019 -11.9201; -11.9201 47.3019; km from the aerodrome",
        "47.3019 -11.9201; NaN 1; is not a number"})
    void whatAixmSaysWrongIsRefused(String text, String put, String reason) throws Exception {
        String whole = aixm(STRUCTURE.formatted("BASELINE", "Chimney", "", POINT.formatted(LATITUDE_FIRST, "47.3019 -11.9201")));
        SurveyReading reading = read(whole.replace(text, put), null, SurveyHeights.Meaning.AS_STATED);
        assertEquals(0, reading.count());
        assertTrue(reading.refused().get(0).english().contains(reason), reading.refused().toString());
    }

    @Test
    void anotherDocumentIsNamed() throws Exception {
        SurveyReading reading = read("<kml/>", null, SurveyHeights.Meaning.AS_STATED);
        assertTrue(reading.refused().get(0).english().contains("its first element is kml"), reading.refused().toString());
    }

    /** Each point of AIXM may name its vertical datum. */
    @Test
    void aStructureInAnotherVerticalDatumIsRefused() throws Exception {
        String other = STRUCTURE.formatted("BASELINE", "Chimney", "", POINT.formatted(LATITUDE_FIRST, "47.3019 -11.9201")
                .replace("</aixm:elevation>", "</aixm:elevation><aixm:verticalDatum>NAVD88</aixm:verticalDatum>"));
        String same = STRUCTURE.formatted("BASELINE", "Mast", "", POINT.formatted(LATITUDE_FIRST, "47.3020 -11.9202")
                .replace("</aixm:elevation>", "</aixm:elevation><aixm:verticalDatum>HARROW_VALE_LOCAL_MEAN_SEA_LEVEL_INVENTED"
                        + "</aixm:verticalDatum>"));
        SurveyReading reading = read(aixm(other, same), null, SurveyHeights.Meaning.TOP);
        assertEquals(1, reading.refusedCount());
        assertTrue(reading.refused().get(0).english().contains("'Chimney' has elevations in 'NAVD88'"), reading.refused().toString());
        assertEquals(List.of("Mast"), obstacles(reading).stream().map(Obstacle::getName).toList());
    }
}
