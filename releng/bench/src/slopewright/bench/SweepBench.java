package slopewright.bench;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

import slopewright.evaluation.obstacles.SurveyField;
import slopewright.evaluation.sweep.PointSweep;
import slopewright.evaluation.sweep.SweptEnd;
import slopewright.geometry.ProtectionSurface;
import slopewright.siting.site.PlacedPoints;
import slopewright.siting.site.SurveyPoints;

/** Runway ends of a country against a million points, one end against the same points alone, and a tenth of the ends and of the points. */
public final class SweepBench {

    private static final int POINTS = 1_000_000;
    private static final int ENDS = 19_500;
    private static final int TENTH = 10;
    private static final int TIMES = 3;
    private static final ProtectionSurface SURFACE = new ProtectionSurface(-60, 0, 300, 0.15, 15_000, 1.93, 0);

    private SweepBench() {
    }

    /** Runs. */
    public static void main(String[] args) {
        SurveyPoints points = points(POINTS);
        List<SweptEnd> ends = ends(ENDS);
        double one = best(() -> single(points, ends.get(0)));
        double all = best(() -> sweep(points, ends));
        double fewEnds = best(() -> sweep(points, ends.subList(0, ENDS / TENTH)));
        SurveyPoints few = points(POINTS / TENTH);
        double fewPoints = best(() -> sweep(few, ends));
        System.out.printf("one end alone %.3f s, %d ends %.3f s, a tenth of the ends %.3f s, a tenth of the points %.3f s%n", one, ENDS, all,
                fewEnds, fewPoints);
        System.out.printf("all ends over one end times all: %.6f (aim 0.05 or less)%n", all / one / ENDS);
        System.out.printf("all ends over a tenth of them: %.1f; all points over a tenth of them: %.1f (aim 10 or so, or less)%n",
                all / fewEnds, all / fewPoints);
    }

    private static SurveyPoints points(int count) {
        SplittableRandom random = new SplittableRandom(20260601);
        return new SurveyPoints(false, random.doubles(count, 40, 55).toArray(), random.doubles(count, -5, 20).toArray(),
                random.doubles(count, 0, 300).toArray(), List.of());
    }

    private static List<SweptEnd> ends(int count) {
        SplittableRandom random = new SplittableRandom(20260602);
        return IntStream.range(0, count).mapToObj(i -> new SweptEnd("E" + i, "", 40.5 + 14 * random.nextDouble(),
                -4.5 + 24 * random.nextDouble(), 360 * random.nextDouble(), 100, "datum")).toList();
    }

    /** The index of the points is part of it. */
    private static void sweep(SurveyPoints points, List<SweptEnd> ends) {
        PointSweep sweep = new PointSweep(points, 1, 1);
        ends.parallelStream().mapToInt(end -> sweep.compare(end.frame(), SURFACE).above()).sum();
    }

    private static void single(SurveyPoints points, SweptEnd end) {
        new SurveyField(points, PlacedPoints.of(points.toFrame(end.frame())), 1, 1).compare(SURFACE);
    }

    private static double best(Runnable work) {
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i < TIMES; i++) {
            long begun = System.nanoTime();
            work.run();
            best = Math.min(best, (System.nanoTime() - begun) / 1e9);
        }
        return best;
    }
}
