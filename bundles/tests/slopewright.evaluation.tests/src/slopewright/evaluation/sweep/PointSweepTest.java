package slopewright.evaluation.sweep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SurveyBlock;
import slopewright.model.io.ProjectFile;
import slopewright.siting.site.SurveyPoints;

/** Many runway ends against the same points say what a project of each says that has the points as a survey block, to the last bit. */
class PointSweepTest {

    private static final double HORIZONTAL_M = 15;
    private static final double VERTICAL_M = 2.5;
    private static final ProtectionSurface SURFACE = new ProtectionSurface(-300, 0, 300, 0.15, 15_000, 2.1, 0);
    private static final int SEED = 20260520;
    private static final int ENDS = 40;

    @TempDir
    private Path folder;

    private static SweptEnd end(int number, double latitudeDeg, double longitudeDeg, double bearingDeg) {
        return new SweptEnd("E" + number, "", latitudeDeg, longitudeDeg, bearingDeg, 100, "some datum");
    }

    /** What a project says that has the runway end and the points as a survey block. */
    private Optional<ObstacleComparison> single(SweptEnd end, SurveyPoints points, ProtectionSurface surface) throws Exception {
        Project project = end.project();
        byte[] bytes = points.bytes();
        Files.write(folder.resolve("points.swpoints"), bytes);
        SurveyBlock block = SlopewrightFactory.eINSTANCE.createSurveyBlock();
        block.setName("points");
        block.setPath("points.swpoints");
        block.setSha256(SurveyPoints.sha256(bytes));
        block.setPointCount(points.count());
        block.setHorizontalAccuracyM(HORIZONTAL_M);
        block.setVerticalAccuracyM(VERTICAL_M);
        project.getSurveyBlocks().add(block);
        ProjectFile.save(project, folder.resolve("single.slopewright"));
        SurfaceComparison found = ProjectEvaluation.of(project, Optional.empty())
                .surroundings(project.getAerodrome().getRunways().get(0).getEnds().get(0)).compare(surface);
        assertEquals(List.of(), found.uncompared());
        return found.governing();
    }

    private static SurveyPoints points(Random random, int count, double southDeg, double westDeg, double highDeg, double wideDeg) {
        double[] north = random.doubles(count, southDeg, southDeg + highDeg).toArray();
        double[] east = random.doubles(count, westDeg, westDeg + wideDeg).map(each -> Math.IEEEremainder(each, 360)).toArray();
        double[] up = random.doubles(count, 90, 500).toArray();
        return new SurveyPoints(false, north, east, up, List.of());
    }

    /** Boxes small enough for a map of the frame and not; few points and many; about the equator, the antimeridian and near a pole. */
    @ParameterizedTest
    @CsvSource({"6000,47,11,0.6,0.8", "1500,47,11,0.6,0.8", "9000,-1,30,2.5,2.5", "4000,-0.2,-0.3,0.4,0.6", "6000,51,179.6,0.5,0.8",
        "4000,86.5,20,0.6,3", "3000,88.6,20,0.6,9", "3000,-70,-60,0.5,1.2"})
    void aSweepSaysWhatEachProjectSaysAlone(int count, double south, double west, double high, double wide) throws Exception {
        Random random = new Random(SEED);
        SurveyPoints points = points(random, count, south, west, high, wide);
        PointSweep sweep = new PointSweep(points, HORIZONTAL_M, VERTICAL_M);
        int inside = 0;
        for (int i = 0; i < ENDS; i++) {
            SweptEnd end = end(i, south + high * random.nextDouble(), Math.IEEEremainder(west + wide * random.nextDouble(), 360),
                    360 * random.nextDouble());
            ProtectionSurface surface = i % 2 == 0 ? SURFACE : SURFACE.withAxisTurnDeg(8).withSlopeDeg(3);
            PointSweep.Result found = sweep.compare(end.frame(), surface);
            Optional<ObstacleComparison> wanted = single(end, points, surface);
            assertEquals(wanted.isPresent(), found.governing() >= 0, end.toString());
            if (wanted.isPresent()) {
                ObstacleComparison.BlockCount counted = wanted.get().block().orElseThrow();
                assertEquals(Double.doubleToLongBits(wanted.get().marginM()), Double.doubleToLongBits(found.marginM().getAsDouble()));
                assertEquals(counted.point(), points.id(found.governing()));
                assertEquals(counted.inside(), found.inside());
                assertEquals(counted.above(), found.above());
                inside++;
            } else {
                assertEquals(OptionalDouble.empty(), found.marginM());
            }
        }
        assertTrue(inside > ENDS / 4, inside + " ends with something inside");
    }

    /** A surface that reaches beyond the points is not known to be clear; one that lies among them is. */
    @Test
    void whatReachesBeyondThePointsIsToldApart() {
        PointSweep sweep = new PointSweep(points(new Random(SEED), 100, 47, 11, 1, 1), HORIZONTAL_M, VERTICAL_M);
        assertTrue(sweep.compare(end(1, 47.5, 11.5, 90).frame(), SURFACE).covered());
        assertFalse(sweep.compare(end(2, 47.5, 11.1, 90).frame(), SURFACE).covered()); // the surface lies to the west
        assertTrue(sweep.compare(end(3, 47.5, 11.1, 270).frame(), SURFACE).covered());
        assertFalse(sweep.compare(end(4, 20, 100, 90).frame(), SURFACE).covered());
        PointSweep around = new PointSweep(points(new Random(SEED), 500, 51, 179.5, 1, 1), HORIZONTAL_M, VERTICAL_M);
        assertTrue(around.compare(end(5, 51.5, 180, 90).frame(), SURFACE).covered());
        assertFalse(around.compare(end(6, 51.5, 90, 90).frame(), SURFACE).covered());
        PointSweep empty = new PointSweep(points(new Random(SEED), 0, 51, 1, 1, 1), 0, 0);
        assertFalse(empty.compare(end(7, 51.5, 1.5, 0).frame(), SURFACE).covered());
    }

    /** As a cluster works: ends are written out and read again elsewhere, and worked on by several threads. */
    @Test
    void whereItIsWorkedOutMakesNoDifference() throws Exception {
        Random random = new Random(SEED);
        PointSweep sweep = new PointSweep(points(random, 5000, 47, 11, 0.6, 0.8), HORIZONTAL_M, VERTICAL_M);
        List<SweptEnd> ends = new ArrayList<>();
        for (int i = 0; i < ENDS; i++) {
            ends.add(end(i, 47 + 0.6 * random.nextDouble(), 11 + 0.8 * random.nextDouble(), 360 * random.nextDouble()));
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ObjectOutputStream objects = new ObjectOutputStream(out)) {
            objects.writeObject(new ArrayList<>(ends));
        }
        List<?> sent;
        try (ObjectInputStream objects = new ObjectInputStream(new ByteArrayInputStream(out.toByteArray()))) {
            sent = (List<?>) objects.readObject();
        }
        List<PointSweep.Result> elsewhere = IntStream.range(0, ENDS).parallel()
                .mapToObj(i -> sweep.compare(((SweptEnd) sent.get(i)).frame(), SURFACE)).toList();
        assertEquals(ends.stream().map(end -> sweep.compare(end.frame(), SURFACE)).toList(), elsewhere);
    }

    @Test
    void anEndThatIsNoneIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> end(1, 90.1, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> end(1, Double.NaN, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> end(1, 0, 181, 0));
        assertThrows(IllegalArgumentException.class, () -> end(1, 0, 0, -1));
        assertThrows(IllegalArgumentException.class, () -> new SweptEnd("a", "", 0, 0, 0, 99_999, "datum"));
        assertThrows(IllegalArgumentException.class, () -> new SweptEnd("a", "", 0, 0, 0, 0, " "));
    }
}
