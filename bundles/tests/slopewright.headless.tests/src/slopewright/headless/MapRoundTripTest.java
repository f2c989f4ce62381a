package slopewright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;

/**
 * What {@code export} writes for maps, {@code import} reads back: obstacles drawn by chance keep name, kind, places, heights, accuracies,
 * source and day, and the project with what came back is judged as the one that was written, rule by rule.
 */
class MapRoundTripTest {

    private static final int OBSTACLES = 40;
    /** Nine decimals of a degree are a tenth of a millimetre. */
    private static final double DEGREE = 1.1e-9;
    private static final double HEIGHT_M = 0.0011;
    private static final List<String> NAMES = List.of("Mast", "Mühle", "\"Old\" oak", "a <b> & c",
            "line; two, three", "=1+1", "żuraw 7", "'x'");

    @TempDir
    private Path folder;

    private Path demoWith(String name, List<Obstacle> obstacles) throws ProjectFileException {
        Project project = ProjectFile.load(Words.demo("harrow-vale/harrow-vale.slopewright"));
        project.getReadBacks().clear();
        project.getAerodrome().getObstacles().clear();
        project.getAerodrome().getObstacles().addAll(obstacles);
        project.getSurveyBlocks().clear();
        Path file = folder.resolve(name);
        ProjectFile.save(project, file);
        return file;
    }

    private static double between(Random random, double from, double to, int decimals) {
        return Double.parseDouble(String.format(Locale.ROOT, "%." + decimals + "f", from + random.nextDouble() * (to - from)));
    }

    /** Places on an ellipse, in order, so that an area has no crossing sides. */
    private static Obstacle obstacle(Random random, int number) {
        Obstacle obstacle = SlopewrightFactory.eINSTANCE.createObstacle();
        obstacle.setId("thing-" + number);
        obstacle.setName(NAMES.get(random.nextInt(NAMES.size())) + " " + number);
        ObstacleKind kind = ObstacleKind.VALUES.get(random.nextInt(ObstacleKind.VALUES.size()));
        obstacle.setKind(kind);
        int places = kind == ObstacleKind.POINT ? 1 : kind == ObstacleKind.LINE ? 2 + random.nextInt(3) : 3 + random.nextInt(4);
        double north = between(random, 47.28, 47.32, 9);
        double east = between(random, -11.95, -11.84, 9);
        double top = 0;
        boolean sloping = random.nextBoolean();
        double level = between(random, 80, 130, 3);
        for (int i = 0; i < places; i++) {
            Place place = SlopewrightFactory.eINSTANCE.createPlace();
            place.setId("thing-" + number + "-place-" + i);
            double turn = 2 * Math.PI * (i + 0.5 * random.nextDouble()) / places;
            place.setLatitudeDeg(Double.parseDouble(String.format(Locale.ROOT, "%.9f", north + 4e-4 * Math.sin(turn))));
            place.setLongitudeDeg(Double.parseDouble(String.format(Locale.ROOT, "%.9f", east + 6e-4 * Math.cos(turn))));
            place.setElevationM(sloping ? between(random, 80, 130, 3) : Double.valueOf(level));
            top = Math.max(top, place.getElevationM());
            obstacle.getPlaces().add(place);
        }
        if (!sloping && random.nextBoolean()) {
            obstacle.getPlaces().forEach(place -> place.setElevationM(null));
        }
        obstacle.setTopElevationM(top);
        obstacle.setHorizontalAccuracyM(between(random, 0.1, 5, 2));
        obstacle.setVerticalAccuracyM(between(random, 0.1, 2, 2));
        obstacle.setSource("survey " + NAMES.get(random.nextInt(NAMES.size())));
        obstacle.setDate(String.format(Locale.ROOT, "2026-05-%02d", 1 + random.nextInt(28)));
        return obstacle;
    }

    private static List<Obstacle> drawn(long seed) {
        Random random = new Random(seed);
        List<Obstacle> drawn = new ArrayList<>();
        for (int i = 0; i < OBSTACLES; i++) {
            drawn.add(obstacle(random, i));
        }
        return drawn;
    }

    private static double topM(Obstacle obstacle, Place place) {
        return place.getElevationM() == null ? obstacle.getTopElevationM() : place.getElevationM();
    }

    /** A ring may come back from another corner on and the other way round, a line may not. */
    private static boolean isSameShape(Obstacle sent, Obstacle back) {
        int count = sent.getPlaces().size();
        if (back.getPlaces().size() != count) {
            return false;
        }
        boolean isRing = sent.getKind() == ObstacleKind.AREA;
        for (int start = 0; start < (isRing ? count : 1); start++) {
            for (int way = 1; way >= (isRing ? -1 : 1); way -= 2) {
                boolean same = true;
                for (int i = 0; i < count && same; i++) {
                    Place here = sent.getPlaces().get(i);
                    Place there = back.getPlaces().get(Math.floorMod(start + way * i, count));
                    same = Math.abs(here.getLatitudeDeg() - there.getLatitudeDeg()) < DEGREE
                            && Math.abs(here.getLongitudeDeg() - there.getLongitudeDeg()) < DEGREE
                            && Math.abs(topM(sent, here) - topM(back, there)) < HEIGHT_M;
                }
                if (same) {
                    return true;
                }
            }
        }
        return false;
    }

    private static List<String> verdicts(Path project) {
        List<String> verdicts = new ArrayList<>();
        for (JsonNode outcome : Words.run("check", project.toString(), "--json").project().get("outcomes")) {
            JsonNode value = outcome.get("value");
            verdicts.add(outcome.get("rule").asText() + " " + outcome.get("element").asText() + " " + outcome.get("outcome").asText() + " "
                    + (value != null && value.isNumber() ? String.format(Locale.ROOT, "%.2f", value.asDouble() + 1e-7) : value));
        }
        verdicts.sort(Comparator.naturalOrder());
        return verdicts;
    }

    @ParameterizedTest
    @CsvSource({"geojson, 1", "geojson, 2", "kml, 3", "kmz, 4", "gpkg, 5", "gpkg, 6"})
    void obstaclesComeBackAsTheyWentAndAreJudgedTheSame(String ending, long seed) throws Exception {
        List<Obstacle> sent = drawn(seed);
        Path project = demoWith("sent.slopewright", sent);
        Path empty = demoWith("empty.slopewright", List.of());
        Path map = folder.resolve("map." + ending);
        Path back = folder.resolve("back.slopewright");
        assertEquals(0, Words.run("export", project.toString(), "-o", map.toString()).code());
        Words read = Words.run("import", map.toString(), "--into", empty.toString(), "-o", back.toString());
        assertEquals(0, read.code(), read.err());
        assertTrue(read.err().contains(OBSTACLES + " obstacles added"), read.err());
        List<Obstacle> came = ProjectFile.load(back).getAerodrome().getObstacles();
        for (Obstacle one : drawn(seed)) {
            Obstacle other = came.stream().filter(obstacle -> one.getName().equals(obstacle.getName())).findFirst().orElseThrow();
            assertEquals(one.getKind(), other.getKind(), one.getName());
            assertTrue(isSameShape(one, other), one.getName());
            assertEquals(one.getTopElevationM(), other.getTopElevationM(), HEIGHT_M, one.getName());
            assertEquals(one.getHorizontalAccuracyM(), other.getHorizontalAccuracyM(), HEIGHT_M, one.getName());
            assertEquals(one.getVerticalAccuracyM(), other.getVerticalAccuracyM(), HEIGHT_M, one.getName());
            assertEquals(one.getSource(), other.getSource(), one.getName());
            assertEquals(one.getDate(), other.getDate(), one.getName());
        }
        assertEquals(verdicts(project), verdicts(back));
        Words again = Words.run("import", map.toString(), "--into", project.toString(), "-o",
                folder.resolve("again.slopewright").toString());
        assertTrue(again.err().contains(OBSTACLES + " obstacles skipped, the project has them already"), again.err());
    }

    /** Lenses go onto the grid and come back: beside each unit of a map stands the point that was read, to a millimetre. */
    @Test
    void pointsForATotalStationComeBackWhereTheUnitsStand() throws Exception {
        Project project = ProjectFile.load(Words.demo("harrow-vale/harrow-vale.slopewright"));
        project.getAerodrome().setCoordinateReference("EPSG:32629");
        project.getAerodrome().getObstacles().clear();
        Path file = folder.resolve("grid.slopewright");
        ProjectFile.save(project, file);
        Path points = folder.resolve("points.xml");
        Path back = folder.resolve("back.slopewright");
        Path map = folder.resolve("map.geojson");
        Words.run("export", file.toString(), "-o", points.toString());
        Words read = Words.run("import", points.toString(), "--into", file.toString(), "-o", back.toString());
        assertEquals(0, read.code(), read.err());
        Words.run("export", back.toString(), "-o", map.toString());
        List<JsonNode> units = new ArrayList<>();
        List<JsonNode> came = new ArrayList<>();
        for (JsonNode feature : new ObjectMapper().readTree(map.toFile()).get("features")) {
            String kind = feature.get("properties").get("kind").asText();
            JsonNode at = feature.get("geometry").get("coordinates");
            (kind.equals("unit") ? units : kind.equals("obstacle") ? came : new ArrayList<JsonNode>()).add(at);
        }
        assertEquals(11, units.size());
        assertEquals(11, came.size());
        double northDeg = 0.0011 / 111_000;
        double eastDeg = northDeg / Math.cos(Math.toRadians(47.3));
        for (JsonNode unit : units) {
            assertTrue(came.stream().anyMatch(point -> Math.abs(point.get(0).asDouble() - unit.get(0).asDouble()) < eastDeg
                    && Math.abs(point.get(1).asDouble() - unit.get(1).asDouble()) < northDeg
                    && Math.abs(point.get(2).asDouble() - unit.get(2).asDouble()) < HEIGHT_M), unit + " among " + came);
        }
    }
}
