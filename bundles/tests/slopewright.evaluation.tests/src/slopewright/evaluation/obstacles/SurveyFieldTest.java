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
import slopewright.siting.site.PlacedPoints;
import slopewright.siting.site.SurveyPoints;

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
