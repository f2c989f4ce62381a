package slopewright.geometry;

import java.util.Arrays;

/**
 * Points put together in tiles of neighbours, so that a comparison with a surface can pass over a whole tile where a bound says enough.
 * What stands in a tile is known by index; the points themselves stay where they are. Immutable, safe for use by many threads at once.
 */
public final class PointTiles {

    /** So many points are in each tile but the last. */
    public static final int POINTS_IN_A_TILE = 256;
    private static final int STEP_BITS = 15;
    private static final int STEPS = 1 << STEP_BITS;

    private final int[] order;
    private final double[] alongM;
    private final double[] rightM;
    private final double[] radiusM;
    private final double[] topM;

    /**
     * Puts points together, each beside its neighbours in plan however unevenly they are spread.
     *
     * @param alongM  places in the frame, metres
     * @param rightM  places in the frame, metres
     * @param heightM heights in the frame, metres
     */
    public PointTiles(double[] alongM, double[] rightM, double[] heightM) {
        order = neighbours(alongM, rightM);
        int tiles = tiles(order.length);
        this.alongM = new double[tiles];
        this.rightM = new double[tiles];
        radiusM = new double[tiles];
        topM = new double[tiles];
        for (int tile = 0; tile < tiles; tile++) {
            Range along = new Range();
            Range right = new Range();
            Range height = new Range();
            for (int at = from(tile); at < to(tile); at++) {
                along.take(alongM[order[at]]);
                right.take(rightM[order[at]]);
                height.take(heightM[order[at]]);
            }
            this.alongM[tile] = along.middle();
            this.rightM[tile] = right.middle();
            radiusM[tile] = Math.hypot(along.half(), right.half());
            topM[tile] = height.most;
        }
    }

    private PointTiles(int[] order, double[] alongM, double[] rightM, double[] radiusM, double[] topM) {
        this.order = order;
        this.alongM = alongM;
        this.rightM = rightM;
        this.radiusM = radiusM;
        this.topM = topM;
    }

    /**
     * Puts tiles together of which circles are known that hold them, so that no point need be looked at. The arrays are shared.
     *
     * @param order   the indices of the points, tile after tile of {@link #neighbours}
     * @param alongM  middle of a circle that holds the points of each tile, metres
     * @param rightM  the same
     * @param radiusM its radius, metres
     * @param topM    height that none of them is above, metres
     */
    public static PointTiles within(int[] order, double[] alongM, double[] rightM, double[] radiusM, double[] topM) {
        if (topM.length != tiles(order.length)) {
            throw new IllegalArgumentException("there are " + tiles(order.length) + " tiles");
        }
        return new PointTiles(order, alongM, rightM, radiusM, topM);
    }

    private static int tiles(int points) {
        return (points + POINTS_IN_A_TILE - 1) / POINTS_IN_A_TILE;
    }

    /** The least and the most of some numbers; one that is no number makes both none. */
    private static final class Range {
        private double least = Double.POSITIVE_INFINITY;
        private double most = Double.NEGATIVE_INFINITY;

        private void take(double number) {
            least = Math.min(least, number);
            most = Math.max(most, number);
        }

        /** Returns how many steps a unit has. */
        private double steps() {
            return STEPS / Math.max(most - least, Double.MIN_NORMAL);
        }

        private double middle() {
            return (least + most) / 2;
        }

        private double half() {
            return (most - least) / 2;
        }
    }

    /**
     * Returns the indices of points in the order of a curve that fills the plane: the bits of both places in turn. Points of the same key
     * stay in their order.
     *
     * @param along places of the points on one axis, of any unit
     * @param right places on the other
     */
    public static int[] neighbours(double[] along, double[] right) {
        Range most = new Range();
        Range across = new Range();
        for (int i = 0; i < along.length; i++) {
            most.take(along[i]);
            across.take(right[i]);
        }
        double alongStep = most.steps();
        double rightStep = across.steps();
        int[] keys = new int[along.length];
        int[] order = new int[along.length];
        for (int i = 0; i < keys.length; i++) {
            keys[i] = (int) (spread(step(along[i] - most.least, alongStep)) << 1 | spread(step(right[i] - across.least, rightStep)));
            order[i] = i;
        }
        return sorted(sorted(order, keys, 0), keys, STEP_BITS);
    }

    /** Sorts indices by some bits of their keys; what has the same bits keeps its order. */
    private static int[] sorted(int[] order, int[] keys, int shift) {
        int[] next = new int[STEPS + 1];
        for (int key : keys) {
            next[(key >>> shift & STEPS - 1) + 1]++;
        }
        for (int i = 0; i < STEPS; i++) {
            next[i + 1] += next[i];
        }
        int[] found = new int[order.length];
        for (int index : order) {
            found[next[keys[index] >>> shift & STEPS - 1]++] = index;
        }
        return found;
    }

    /** Nought where all places are the same, or one is nowhere. */
    private static int step(double fromLeast, double steps) {
        return (int) Math.min(STEPS - 1.0, fromLeast * steps);
    }

    /** Puts a nought before each of the lower fifteen bits. */
    private static long spread(int bits) {
        long wide = bits & STEPS - 1;
        wide = (wide | wide << 8) & 0x00FF00FFL;
        wide = (wide | wide << 4) & 0x0F0F0F0FL;
        wide = (wide | wide << 2) & 0x33333333L;
        return (wide | wide << 1) & 0x55555555L;
    }

    /** Returns how many tiles there are. */
    public int count() {
        return topM.length;
    }

    /** Returns the first position of a tile, for {@link #index}. */
    public int from(int tile) {
        return tile * POINTS_IN_A_TILE;
    }

    /** Returns the position after the last of a tile. */
    public int to(int tile) {
        return Math.min(order.length, from(tile) + POINTS_IN_A_TILE);
    }

    /** Returns the index of the point at a position. */
    public int index(int position) {
        return order[position];
    }

    /** Returns the indices of the points of a tile. */
    public int[] indices(int tile) {
        return Arrays.copyOfRange(order, from(tile), to(tile));
    }

    /**
     * Returns a bound for all points of a tile, as {@link SurfaceSweep#mostExcessM} gives it.
     *
     * @param tile      the tile
     * @param surface   the surface
     * @param accuracyM radius in which the true place of each point may lie, metres, zero or more
     * @param higherM   by how much each may stand higher, metres, zero or more
     * @return metres; negative infinity where every point lies outside
     */
    public double mostExcessM(int tile, SurfaceSweep surface, double accuracyM, double higherM) {
        return surface.mostExcessM(alongM[tile], rightM[tile], topM[tile] + higherM, radiusM[tile], accuracyM);
    }

    /** Returns whether every point of a tile lies under or over a surface; no where the tile is too near its outline to tell. */
    public boolean isInside(int tile, SurfaceSweep surface) {
        return surface.holdsCircle(alongM[tile], rightM[tile], radiusM[tile]);
    }

    /** Returns whether every point of a tile lies within a distance of the origin; no where the tile is too near to it to tell. */
    public boolean isWithin(int tile, double distanceM) {
        return Math.hypot(alongM[tile], rightM[tile]) + radiusM[tile] < distanceM;
    }
}
