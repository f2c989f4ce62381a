package slopewright.geometry;

/**
 * Points put together in tiles of neighbours, so that a comparison with a surface can pass over a whole tile where a bound says enough.
 * What stands in a tile is known by index; the points themselves stay where they are. Immutable, safe for use by many threads at once.
 */
public final class PointTiles {

    private final PointCells cells;
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
        cells = PointCells.of(alongM, rightM, heightM);
        int tiles = cells.count();
        this.alongM = new double[tiles];
        this.rightM = new double[tiles];
        radiusM = new double[tiles];
        topM = new double[tiles];
        for (int tile = 0; tile < tiles; tile++) {
            PointCells.Range along = cells.x(tile);
            PointCells.Range right = cells.y(tile);
            this.alongM[tile] = along.middle();
            this.rightM[tile] = right.middle();
            radiusM[tile] = Math.hypot(along.half(), right.half());
            topM[tile] = cells.top(tile);
        }
    }

    private PointTiles(PointCells cells, double[] alongM, double[] rightM, double[] radiusM, double[] topM) {
        this.cells = cells;
        this.alongM = alongM;
        this.rightM = rightM;
        this.radiusM = radiusM;
        this.topM = topM;
    }

    /**
     * Puts tiles together of which circles are known that hold them, so that no point need be looked at. The arrays are shared.
     *
     * @param cells   the points, a cell each tile
     * @param alongM  middle of a circle that holds the points of each tile, metres
     * @param rightM  the same
     * @param radiusM its radius, metres
     * @param topM    height that none of them is above, metres
     */
    public static PointTiles within(PointCells cells, double[] alongM, double[] rightM, double[] radiusM, double[] topM) {
        if (topM.length != cells.count()) {
            throw new IllegalArgumentException("there are " + cells.count() + " tiles");
        }
        return new PointTiles(cells, alongM, rightM, radiusM, topM);
    }

    /** Returns how many tiles there are. */
    public int count() {
        return topM.length;
    }

    /** Returns the first position of a tile, for {@link #index}. */
    public int from(int tile) {
        return cells.from(tile);
    }

    /** Returns the position after the last of a tile. */
    public int to(int tile) {
        return cells.to(tile);
    }

    /** Returns the index of the point at a position. */
    public int index(int position) {
        return cells.index(position);
    }

    /** Returns the indices of the points of a tile. */
    public int[] indices(int tile) {
        return cells.indices(tile);
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
