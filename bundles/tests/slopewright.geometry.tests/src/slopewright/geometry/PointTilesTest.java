package slopewright.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a tile says of its points is held against each of them, as the surface itself compares it. */
class PointTilesTest {

    private static final int POINTS = 20_000;

    private final Random random = new Random(11);
    private final double[] along = random.doubles(POINTS, -8000, 500).toArray();
    private final double[] right = new double[POINTS];
    private final double[] height = random.doubles(POINTS, 0, 400).toArray();

    @Test
    void everyPointStandsInOneTile() {
        for (int count : new int[] {0, 1, 255, 256, 257, POINTS}) {
            PointTiles tiles = new PointTiles(Arrays.copyOf(along, count), Arrays.copyOf(right, count),
                    Arrays.copyOf(height, count));
            BitSet seen = new BitSet();
            int all = 0;
            for (int tile = 0; tile < tiles.count(); tile++) {
                for (int at = tiles.from(tile); at < tiles.to(tile); at++) {
                    seen.set(tiles.index(at));
                    all++;
                }
            }
            assertEquals(count, all);
            assertEquals(count, seen.cardinality());
        }
    }

    @ParameterizedTest
    @CsvSource({"0, 1.93, 0", "-5, 1.93, 3.5", "5, 5.9, 0.4", "2.5, -1, 12"})
    void noPointStandsHigherThanTheBoundOfItsTile(double turnDeg, double slopeDeg, double accuracyM) {
        for (int i = 0; i < POINTS; i++) {
            right[i] = random.nextGaussian() * 400;
        }
        ProtectionSurface surface = new ProtectionSurface(-60, 0, 100, 0.1, 7500, slopeDeg, turnDeg);
        SurfaceSweep sweep = new SurfaceSweep(surface);
        PointTiles tiles = new PointTiles(along, right, height);
        int outside = 0;
        int inside = 0;
        for (int tile = 0; tile < tiles.count(); tile++) {
            double most = tiles.mostExcessM(tile, sweep, accuracyM, 0.3);
            boolean whole = tiles.isInside(tile, sweep);
            outside += most == Double.NEGATIVE_INFINITY ? 1 : 0;
            inside += whole ? 1 : 0;
            for (int at = tiles.from(tile); at < tiles.to(tile); at++) {
                int i = tiles.index(at);
                FramePoint point = new FramePoint(along[i], right[i], height[i]);
                double excess = surface.compare(point, accuracyM, 0.3).map(Penetration::excessM).orElse(Double.NEGATIVE_INFINITY);
                assertTrue(excess <= most, "point " + i);
                assertTrue(!whole || surface.contains(along[i], right[i]), "point " + i);
            }
        }
        assertTrue(outside > 0 && inside > 0, "the sample says something of both");
    }

    @Test
    void aTileWithANumberThatIsNoneIsNeverPassedOver() {
        double[] broken = height.clone();
        broken[7] = Double.NaN;
        PointTiles tiles = new PointTiles(along, right, broken);
        SurfaceSweep sweep = new SurfaceSweep(new ProtectionSurface(-60, 0, 1000, 10_000, 0.1, 7500, 1.93, 0));
        int unsure = 0;
        for (int tile = 0; tile < tiles.count(); tile++) {
            unsure += tiles.mostExcessM(tile, sweep, 0, 0) < 0 ? 0 : 1;
        }
        assertEquals(1, unsure);
        double[] nowhere = along.clone();
        nowhere[7] = Double.NaN;
        PointTiles lost = new PointTiles(nowhere, right, height);
        for (int tile = 0; tile < lost.count(); tile++) {
            for (int at = lost.from(tile); at < lost.to(tile); at++) {
                if (lost.index(at) == 7) {
                    assertFalse(lost.isInside(tile, sweep));
                    assertFalse(lost.mostExcessM(tile, sweep, 0, 0) < 0 && lost.mostExcessM(tile, sweep, 0, 0) > Double.NEGATIVE_INFINITY);
                }
            }
        }
    }
}
