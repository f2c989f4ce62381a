package slopewright.exchange.survey;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

import slopewright.exchange.Demo;
import slopewright.exchange.ExchangeException;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** The same heights come out, or are refused with their line, whatever format they stand in. Sums done by hand. */
class SurveyHeightsByFormatTest {
    private static final List<String> FORMATS = List.of("csv", "geojson", "kml");

    @TempDir
    private Path folder;

    /** A case: facts and their numbers, and the top that comes out, or a part of the reason for which the file is refused. */
    record Heights(String facts, Double topM, String refusal) {
    }

    private static List<Heights> heights() {
        return List.of(new Heights("topElevationM=114 groundElevationM=86 heightM=28", 114.0, ""),
                new Heights("groundElevationM=86 heightM=28", 114.0, ""), new Heights("elevationM=114", 114.0, ""),
                new Heights("elevationM=86 heightM=114", null, "top at 200 m"),
                new Heights("topElevationM=120 groundElevationM=86 heightM=28", null, "make 114 m"),
                new Heights("topElevationM=80 groundElevationM=86", null, "not above its ground"),
                new Heights("heightM=28", null, "no elevation of the ground"), new Heights("elevationM=0", null, "elevation of 0 m"),
                new Heights("topElevationM=0", null, "elevation of 0 m"),
                new Heights("topElevationM=114 heightM=0", null, "height of 0 m"),
                new Heights("", null, "no elevation of its top"),
                new Heights("topElevationM=NaN", null, "topElevationM"));
    }

    static List<Object[]> cases() {
        List<Object[]> cases = new ArrayList<>();
        for (String format : FORMATS) {
            heights().forEach(heights -> cases.add(new Object[] {format, heights}));
        }
        return cases;
    }

    private Path file(String format, String facts) throws IOException {
        List<String[]> pairs = facts.isEmpty() ? List.of() : List.of(facts.split(" ")).stream().map(fact -> fact.split("=")).toList();
        StringBuilder text = new StringBuilder();
        switch (format) {
            case "csv" -> {
                text.append("id,latitudeDeg,longitudeDeg");
                pairs.forEach(pair -> text.append(',').append(pair[0]));
                text.append("\nmast,47.298,-11.934");
                pairs.forEach(pair -> text.append(',').append(pair[1]));
                text.append('\n');
            }
            case "geojson" -> {
                text.append("{\"type\":\"FeatureCollection\",\"features\":[\n{\"type\":\"Feature\",\"properties\":{\"name\":\"mast\"");
                pairs.forEach(pair -> text.append(",\"").append(pair[0]).append("\":\"").append(pair[1]).append('"'));
                text.append("},\"geometry\":{\"type\":\"Point\",\"coordinates\":[-11.934,47.298]}}]}");
            }
            default -> {
                text.append("<kml>\n<Placemark><name>mast</name><ExtendedData>");
                pairs.forEach(pair -> text.append("<Data name=\"").append(pair[0]).append("\"><value>").append(pair[1])
                        .append("</value></Data>"));
                text.append("</ExtendedData><Point><coordinates>-11.934,47.298</coordinates></Point></Placemark></kml>");
            }
        }
        return Files.writeString(folder.resolve("s." + format), text);
    }

    private static SurveyOrigin origin() {
        return new SurveyOrigin("test", Optional.empty(), Optional.of("EPSG:32629"), OptionalDouble.empty(), OptionalDouble.empty(),
                new SurveyHeights(SurveyHeights.Meaning.AS_STATED, OptionalDouble.empty()));
    }

    private static double top(Path file) throws ExchangeException {
        Project project = Demo.project();
        int before = project.getAerodrome().getObstacles().size();
        Surveys.obstacles(project, file, origin());
        return project.getAerodrome().getObstacles().get(before).getTopElevationM();
    }

    private static String refused(Path file) {
        Project project = Demo.project();
        byte[] before = ProjectFile.bytes(project);
        ExchangeException fault = assertThrows(ExchangeException.class, () -> Surveys.obstacles(project, file, origin()));
        assertArrayEquals(before, ProjectFile.bytes(project), "nothing is changed");
        return fault.messages().get(0).english();
    }

    @ParameterizedTest(name = "{0}: {1}")
    @MethodSource("cases")
    void aHeightIsReconciledOrRefused(String format, Heights heights) throws IOException, ExchangeException {
        Path file = file(format, heights.facts());
        if (heights.topM() != null) {
            assertEquals(heights.topM(), top(file), 1e-9);
            return;
        }
        String reason = refused(file);
        assertTrue(reason.contains(heights.refusal()), reason);
        assertTrue(reason.matches(".*s\\." + format + ":[12]: .*"), "names the line: " + reason);
    }

    /** An altitude in space is an elevation like another: beside a height it may be that of the ground or of the top. */
    @ParameterizedTest
    @CsvSource({"absolute, top at 200 m", "relativeToGround, gives the heightM twice"})
    void anAltitudeBesideAHeightIsAskedFor(String mode, String reason) throws IOException {
        Path file = Files.writeString(folder.resolve("a.kml"), "<kml><Placemark><name>mast</name><ExtendedData>"
                + "<Data name=\"heightM\"><value>114</value></Data></ExtendedData><Point><altitudeMode>" + mode + "</altitudeMode>"
                + "<coordinates>-11.934,47.298,86</coordinates></Point></Placemark></kml>");
        assertTrue(refused(file).contains(reason), refused(file));
    }

    /** The third number of a position in GeoJSON is an elevation as well. */
    @Test
    void aThirdNumberBesideAHeightIsAskedFor() throws IOException {
        Path file = Files.writeString(folder.resolve("z.geojson"), "{\"type\":\"FeatureCollection\",\"features\":["
                + "{\"type\":\"Feature\",\"properties\":{\"name\":\"mast\",\"heightM\":114},"
                + "\"geometry\":{\"type\":\"Point\",\"coordinates\":[-11.934,47.298,86]}}]}");
        assertTrue(refused(file).contains("top at 200 m"), refused(file));
    }

    /** A drawing has one number for each position: without it, or at zero, nobody knows how high the thing stands. */
    @ParameterizedTest
    @CsvSource({"'30\n0.0\n', elevation of 0 m", "'', no elevation of its top"})
    void aDrawingWithoutHeightsIsRefused(String group, String reason) throws IOException {
        Path file = Files.writeString(folder.resolve("d.dxf"), "0\nSECTION\n2\nENTITIES\n0\nPOINT\n8\nMAST\n10\n429400.0\n20\n5238700.0\n"
                + group + "0\nENDSEC\n0\nEOF\n");
        assertTrue(refused(file).contains(reason), refused(file));
    }
}
