package slopewright.evaluation.obstacles;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.geometry.Curvature;
import slopewright.geometry.FramePoint;
import slopewright.geometry.Penetration;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.siting.site.PlacedPoints;
import slopewright.siting.site.PointOrder;
import slopewright.siting.site.SiteFrame;
import slopewright.siting.site.SurveyPoints;
import slopewright.testkit.DemoProjects;

/** What a block says of a surface is what its points say, asked one after the other. */
class SurveyFieldTest {

    private static final int POINTS = 30_000;

    private final double[] along = new double[POINTS];
    private final double[] right = new double[POINTS];
    private final double[] height = new double[POINTS];

    private SurveyField field(long seed, double mostHeightM, double horizontalM, double verticalM) {
        Random random = new Random(seed);
        for (int i = 0; i < POINTS; i++) {
            along[i] = 400 - 9000 * random.nextDouble();
            right[i] = i % 3 == 0 ? 30 * random.nextGaussian() : 1600 * (random.nextDouble() - 0.5);
            height[i] = mostHeightM * random.nextDouble();
        }
        SurveyPoints points = new SurveyPoints(true, right, along, height, List.of());
        return new SurveyField(points, PlacedPoints.of(new SurveyPoints.InFrame(along, right, height)), horizontalM, verticalM);
    }

    private record Hit(int index, double excessM) {
    }

    private List<Hit> oneByOne(ProtectionSurface surface, double horizontalM, double verticalM) {
        List<Hit> hits = new ArrayList<>();
        for (int i = 0; i < POINTS; i++) {
            Optional<Penetration> exact = surface.compare(new FramePoint(along[i], right[i], height[i]), horizontalM, verticalM);
            if (exact.isPresent()) {
                hits.add(new Hit(i, exact.get().excessM()));
            }
        }
        return hits;
    }

    @ParameterizedTest
    @CsvSource({"0, 1.93, 3, 0.5, 0.3", "4, 1.93, 60, 0, 0", "-7, 5.9, 300, 12, 2", "0, 0, 0.5, 3, 0", "2, -0.8, 40, 5, 1",
            "0, 1.93, 0, 0, 0"})
    void itGovernsAsTheHighestOfAll(double turnDeg, double slopeDeg, double mostHeightM, double horizontalM, double verticalM) {
        SurveyField field = field(3, mostHeightM, horizontalM, verticalM);
        ProtectionSurface surface = new ProtectionSurface(-60, 1.5, 0.8, 150, 0.1, 6000, slopeDeg, turnDeg);
        List<Hit> hits = oneByOne(surface, horizontalM, verticalM);
        List<Hit> highestFirst = hits.stream()
                .sorted(Comparator.comparingDouble(Hit::excessM).reversed().thenComparing(Hit::index)).toList();
        SurveyField.Result result = field.compare(surface);
        assertEquals(hits.size(), result.inside());
        assertEquals(hits.stream().filter(hit -> hit.excessM() > 0).count(), result.above());
        assertEquals(highestFirst.get(0).index(), result.worst());
        assertEquals(highestFirst.get(0).excessM(), result.governing().orElseThrow().excessM());
        assertEquals(highestFirst.stream().limit(25).map(Hit::index).toList(), field.leastMargins(surface, 25));
        assertEquals(List.of(), field.leastMargins(surface, 0));
        List<Integer> above = hits.stream().filter(hit -> hit.excessM() > 0).map(Hit::index).limit(40).toList();
        assertEquals(above, field.above(surface, 40).stream().map(SurveyField.Above::index).toList());
        assertEquals(above.isEmpty(), field(3, mostHeightM, horizontalM, verticalM).isClear(surface));
    }

    /**
     * Points by latitude and longitude, spread evenly, in clusters, along a line and with one far off, are put together and brought into
     * the frame tile by tile; what is said of them is what each alone says.
     */
    @ParameterizedTest
    @CsvSource({"EVEN, 0, 0", "EVEN, 12, 2", "CLUSTERS, 0.4, 0.25", "CLUSTERS, 30, 1", "LINE, 0, 0.1", "FAR_OFF, 0.4, 0.25"})
    void pointsOnEarthGovernAsTheHighestOfAll(String spread, double horizontalM, double verticalM) {
        Project project = DemoProjects.load(DemoProjects.GOOD);
        SiteFrame frame = SiteFrame.of(Projects.host(DemoProjects.aid(project, "PAPI 09")).orElseThrow());
        for (long seed = 1; seed <= 4; seed++) {
            Random random = new Random(seed);
            double[] north = new double[POINTS];
            double[] east = new double[POINTS];
            double[] elevation = random.doubles(POINTS, 60, 60 + 40 * seed).toArray();
            for (int i = 0; i < POINTS; i++) {
                double cluster = random.nextInt(7) * 0.012;
                double across = switch (spread) {
                    case "CLUSTERS" -> 0.0007 * random.nextGaussian();
                    case "LINE" -> 0;
                    default -> 0.03 * (random.nextDouble() - 0.5);
                };
                east[i] = -11.9 - ("CLUSTERS".equals(spread) ? cluster + 0.0009 * random.nextGaussian() : 0.12 * random.nextDouble());
                north[i] = 47.3 + across;
            }
            if ("FAR_OFF".equals(spread)) {
                north[POINTS / 2] = 48.1;
            }
            SurveyPoints points = new SurveyPoints(false, north, east, elevation, List.of());
            SurveyPoints.InFrame all = points.toFrame(frame);
            System.arraycopy(all.alongM(), 0, along, 0, POINTS);
            System.arraycopy(all.rightM(), 0, right, 0, POINTS);
            System.arraycopy(all.heightM(), 0, height, 0, POINTS);
            for (double turnDeg : new double[] {0, -4, 9}) {
                ProtectionSurface surface = new ProtectionSurface(-60, 0, -10 + 5 * seed, 150, 0.1, 6000, 1.93, turnDeg);
                SurveyField field = new SurveyField(points, PlacedPoints.of(new PointOrder(points), frame), horizontalM, verticalM);
                List<Hit> hits = oneByOne(surface, horizontalM, verticalM);
                Optional<Hit> highest = hits.stream()
                        .min(Comparator.comparingDouble(Hit::excessM).reversed().thenComparing(Hit::index));
                SurveyField.Result result = field.compare(surface);
                assertEquals(hits.size(), result.inside());
                assertEquals(hits.stream().filter(hit -> hit.excessM() > 0).count(), result.above());
                assertEquals(highest.map(Hit::index).orElse(-1), result.worst());
                assertEquals(highest.map(Hit::excessM), result.governing().map(Penetration::excessM));
                assertEquals(hits.stream().noneMatch(hit -> hit.excessM() > 0), field.isClear(surface));
            }
        }
    }

    @Test
    void aLineOfSightIsLiftedByTheCurvature() {
        SurveyField field = field(8, 30, 1, 0.5);
        ProtectionSurface surface = new ProtectionSurface(0, 0, 2, 0, 0.2, 8000, 0.2, 0);
        double highest = Double.NEGATIVE_INFINITY;
        int above = 0;
        int inside = 0;
        for (Hit hit : oneByOne(surface, 1, 0.5)) {
            double excess = hit.excessM() - Curvature.dropM(Math.max(0, -along[hit.index()] - 1), Curvature.USUAL_REFRACTION);
            highest = Math.max(highest, excess);
            above += excess > 0 ? 1 : 0;
            inside++;
        }
        SurveyField.Result result = field.compare(surface, outwardM -> Curvature.dropM(outwardM, Curvature.USUAL_REFRACTION));
        assertTrue(above > 0 && above < inside, "the sample says something");
        assertEquals(inside, result.inside());
        assertEquals(above, result.above());
        assertEquals(highest, result.governing().orElseThrow().excessM(), 1e-9);
    }
}
