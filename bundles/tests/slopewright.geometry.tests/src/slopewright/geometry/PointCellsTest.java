package slopewright.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Random;
import java.util.function.IntToDoubleFunction;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a cell says of its points is held against each of them, however they are spread. */
class PointCellsTest {

    private static final int POINTS = 30_000;

    /** How points are spread over one axis. */
    private enum Spread {
        EVEN, GRID, ONE_PLACE, CLUSTERS, POWERS, FAR_AWAY, TINY, HUGE, ONE_FAR_OFF, DEGREES;

        private IntToDoubleFunction axis(Random random, boolean first) {
            return switch (this) {
                case EVEN -> i -> random.nextDouble() * (first ? 20_000 : 300) - 70;
                case GRID -> i -> first ? i / 200 * 30.0 : i % 200 * 30.0;
                case ONE_PLACE -> i -> 47.25;
                case CLUSTERS -> i -> random.nextInt(5) * 1000 + random.nextGaussian();
                case POWERS -> i -> Math.pow(10, random.nextDouble() * 30 - 15);
                case FAR_AWAY -> i -> 5e6 + random.nextInt(1000) * 1e-6;
                case TINY -> i -> random.nextDouble() * (first ? 1e-305 : 1e-280);
                case HUGE -> i -> (random.nextDouble() - 0.5) * 1e308;
                case ONE_FAR_OFF -> i -> i == 17 ? 1e9 : random.nextDouble();
                case DEGREES -> i -> first ? 47.2 + 0.2 * random.nextDouble() : -12.05 + 0.3 * random.nextDouble();
            };
        }
    }

    private final Random random = new Random(29);

    @ParameterizedTest
    @EnumSource(Spread.class)
    void everyPointLiesInOneCellAndInItsBox(Spread spread) {
        for (int count : new int[] {0, 1, 256, 512, 513, 5000, POINTS}) {
            IntToDoubleFunction axisX = spread.axis(random, true);
            IntToDoubleFunction axisY = spread.axis(random, false);
            double[] x = new double[count];
            double[] y = new double[count];
            Arrays.setAll(x, axisX);
            Arrays.setAll(y, axisY);
            double[] height = random.doubles(count, -50, 400).toArray();
            PointCells cells = PointCells.of(x, y, height);
            hold(cells, x, y, height);
            assertTrue(cells.count() <= 8 * count / PointCells.POINTS_IN_A_CELL + 300, cells.count() + " cells of " + count);
        }
    }

    private static void hold(PointCells cells, double[] x, double[] y, double[] height) {
        BitSet seen = new BitSet();
        for (int cell = 0; cell < cells.count(); cell++) {
            int[] indices = cells.indices(cell);
            assertTrue(indices.length > 0 && indices.length <= 2 * PointCells.POINTS_IN_A_CELL, indices.length + " points");
            assertEquals(indices.length, cells.to(cell) - cells.from(cell));
            double top = Double.NEGATIVE_INFINITY;
            for (int at = 0; at < indices.length; at++) {
                int i = indices[at];
                assertEquals(i, cells.index(cells.from(cell) + at));
                assertTrue(at == 0 || indices[at - 1] < i, "they keep their order");
                assertTrue(cells.x(cell).least() <= x[i] && x[i] <= cells.x(cell).most(), x[i] + " in " + cells.x(cell));
                assertTrue(cells.y(cell).least() <= y[i] && y[i] <= cells.y(cell).most(), y[i] + " in " + cells.y(cell));
                top = Math.max(top, height[i]);
                seen.set(i);
            }
            assertEquals(top, cells.top(cell));
        }
        assertEquals(x.length, seen.cardinality());
        assertEquals(x.length, cells.points());
        if (x.length > 0) {
            assertEquals(Arrays.stream(x).min().orElseThrow(), cells.x().least());
            assertEquals(Arrays.stream(x).max().orElseThrow(), cells.x().most());
            assertEquals(Arrays.stream(y).min().orElseThrow(), cells.y().least());
            assertEquals(Arrays.stream(y).max().orElseThrow(), cells.y().most());
        }
    }

    /** Points that lie evenly are told apart by their cells: a box is hardly larger than the share of the points that it holds. */
    @Test
    void cellsOfEvenPointsAreSmallAndNearlySquare() {
        double[] x = random.doubles(POINTS, 0, 4000).toArray();
        double[] y = random.doubles(POINTS, 0, 1000).toArray();
        PointCells cells = PointCells.of(x, y, new double[POINTS]);
        for (int cell = 0; cell < cells.count(); cell++) {
            double share = 4_000_000.0 * PointCells.POINTS_IN_A_CELL / POINTS;
            assertTrue(4 * cells.x(cell).half() * cells.y(cell).half() <= 1.3 * share);
            assertTrue(cells.x(cell).half() < 2 * cells.y(cell).half() && cells.y(cell).half() < 2 * cells.x(cell).half());
        }
    }

    /** A number that is none is never left out of a box: the box is none either. */
    @Test
    void whatIsNoNumberMakesItsCellNone() {
        double[] x = random.doubles(POINTS, 0, 4000).toArray();
        double[] y = random.doubles(POINTS, 0, 1000).toArray();
        x[4711] = Double.NaN;
        PointCells cells = PointCells.of(x, y, new double[POINTS]);
        for (int cell = 0; cell < cells.count(); cell++) {
            boolean none = Arrays.stream(cells.indices(cell)).anyMatch(i -> i == 4711);
            assertEquals(none, Double.isNaN(cells.x(cell).least()) && Double.isNaN(cells.x(cell).most()));
        }
        double[] height = new double[POINTS];
        height[4711] = Double.NaN;
        PointCells high = PointCells.of(y, y, height);
        for (int cell = 0; cell < high.count(); cell++) {
            assertEquals(Arrays.stream(high.indices(cell)).anyMatch(i -> i == 4711), Double.isNaN(high.top(cell)));
        }
    }
}
