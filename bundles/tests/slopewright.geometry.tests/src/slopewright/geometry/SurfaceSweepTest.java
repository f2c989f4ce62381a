package slopewright.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The flat sweep tells of every point what the surface itself tells. */
class SurfaceSweepTest {

    private static final int POINTS = 20000;

    @ParameterizedTest
    @ValueSource(doubles = {-5, 0, 2.5, 5})
    void everyPointIsComparedAsByTheSurface(double turnDeg) {
        ProtectionSurface surface = new ProtectionSurface(230, 1.2, 150, 0.1, 7500, 1.93, turnDeg);
        Random random = new Random(42);
        double[] along = random.doubles(POINTS, -8000, 500).toArray();
        double[] right = random.doubles(POINTS, -1200, 1200).toArray();
        double[] height = random.doubles(POINTS, 0, 400).toArray();
        double[] excess = new double[POINTS];
        int worst = new SurfaceSweep(surface).sweep(along, right, height, 0, POINTS, excess);
        int expectedWorst = -1;
        int inside = 0;
        for (int i = 0; i < POINTS; i++) {
            Optional<Penetration> one = surface.compare(new FramePoint(along[i], right[i], height[i]), 0, 0);
            assertEquals(one.isEmpty(), Double.isNaN(excess[i]), "point " + i);
            if (one.isPresent()) {
                inside++;
                assertEquals(one.get().excessM(), excess[i], 1e-9, "point " + i);
                expectedWorst = expectedWorst < 0 || excess[i] > excess[expectedWorst] ? i : expectedWorst;
            }
        }
        assertTrue(inside > POINTS / 4, "the sample says something");
        assertEquals(expectedWorst, worst);
        double[] found = excess;
        int above = (int) IntStream.range(0, POINTS).filter(i -> found[i] > 0).count();
        SurfaceSweep.Tally all = new SurfaceSweep.Tally(worst, excess[worst], inside, above);
        assertEquals(all, new SurfaceSweep(surface).tally(along, right, height, 0, POINTS));
        SurfaceSweep.Tally parts = SurfaceSweep.Tally.NONE;
        for (int from = POINTS - 1000; from >= 0; from -= 1000) {
            parts = parts.with(new SurfaceSweep(surface).tally(along, right, height, from, from + 1000));
        }
        assertEquals(all, parts);
    }

    /** A run works its points out several at a time, and must find what each alone comes to, whatever its length and wherever it begins. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void aRunOfAnyLengthFindsWhatEachPointAloneDoes(long seed) {
        Random random = new Random(seed);
        ProtectionSurface surface = new ProtectionSurface(random.nextDouble() * 400 - 200, random.nextDouble() * 20 - 10,
                random.nextDouble() * 50, random.nextDouble() * 300, random.nextDouble() / 4, 500 + random.nextDouble() * 9000,
                random.nextDouble() * 12 - 6, random.nextDouble() * 20 - 10);
        SurfaceSweep sweep = new SurfaceSweep(surface);
        double[] along = random.doubles(3000, -9000, 1000).toArray();
        double[] right = random.doubles(3000, -1500, 1500).toArray();
        double[] height = random.doubles(3000, -100, 500).toArray();
        for (int spoiled = 0; spoiled < 60; spoiled++) {
            double[] column = spoiled % 3 == 0 ? along : spoiled % 3 == 1 ? right : height;
            column[random.nextInt(column.length)] = column == height || spoiled % 2 == 0 ? Double.NaN : Double.POSITIVE_INFINITY;
        }
        for (int run = 0; run < 200; run++) {
            int from = random.nextInt(along.length);
            int to = from + random.nextInt(along.length - from + 1);
            double[] excess = new double[along.length];
            SurfaceSweep.Tally all = SurfaceSweep.Tally.NONE;
            for (int i = from; i < to; i++) {
                double alone = sweep.excessM(along[i], right[i], height[i]);
                all = Double.isNaN(alone) ? all : all.with(new SurfaceSweep.Tally(i, alone, 1, alone > 0 ? 1 : 0));
            }
            assertEquals(all, sweep.tally(along, right, height, from, to), "points " + from + " to " + to);
            assertEquals(all.worst(), sweep.sweep(along, right, height, from, to, excess));
            for (int i = from; i < to; i++) {
                assertEquals(sweep.excessM(along[i], right[i], height[i]), excess[i], "point " + i);
            }
        }
    }

    @Test
    void aRunTouchesOnlyItsOwnPoints() {
        SurfaceSweep sweep = new SurfaceSweep(new ProtectionSurface(0, 0, 100, 0.1, 1000, 2, 0));
        double[] along = {-10, -20, -30, 900};
        double[] excess = {7, 7, 7, 7};
        assertEquals(2, sweep.sweep(along, new double[4], new double[] {90, 1, 50, 99}, 1, 4, excess));
        assertEquals(7, excess[0]);
        assertTrue(Double.isNaN(excess[3]));
    }

    @Test
    void whereAllPointsLieOutsideThereIsNoWorst() {
        SurfaceSweep sweep = new SurfaceSweep(new ProtectionSurface(0, 0, 100, 0.1, 1000, 2, 0));
        assertEquals(-1, sweep.sweep(new double[] {10, 20}, new double[2], new double[] {9, 9}, 0, 2, new double[2]));
        assertEquals(SurfaceSweep.Tally.NONE, sweep.tally(new double[] {10, 20}, new double[2], new double[] {9, 9}, 0, 2));
        assertEquals(-1, sweep.sweep(new double[0], new double[0], new double[0], 0, 0, new double[0]));
    }

    /** On the outline is inside, a number beyond it is not; what is no number is nowhere. */
    @Test
    void theOutlineItselfCounts() {
        SurfaceSweep sweep = new SurfaceSweep(new ProtectionSurface(0, 0, 100, 0, 1000, 0, 0));
        double[] along = {0, 2e-13, -1000, -1000 - 2e-13, -500, -500, Double.NaN, -500, -500};
        double[] right = {50, 0, -50, 0, 50, 50 + 1e-14, 0, Double.NaN, 0};
        double[] height = {1, 9, 2, 9, 0, 9, 9, 9, Double.NaN};
        assertEquals(new SurfaceSweep.Tally(2, 2, 3, 2), sweep.tally(along, right, height, 0, along.length));
        double[] excess = new double[along.length];
        assertEquals(2, sweep.sweep(along, right, height, 0, along.length, excess));
        for (int i = 0; i < excess.length; i++) {
            assertEquals(i == 0 || i == 2 || i == 4, !Double.isNaN(excess[i]), "point " + i);
        }
    }
}
