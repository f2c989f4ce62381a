package slopewright.siting.site;

import java.util.Optional;

import slopewright.geometry.PointCells;

/**
 * Survey points put together in tiles of neighbours, once for all frames that they are brought into. Immutable, safe for many threads at
 * once.
 */
public final class PointOrder {

    /** More than a frame draws out what is within {@link PlacedPoints}' reach of it. */
    static final double MOST_STRETCH = 1.02;
    /** More than a degree of a meridian or of the equator measures anywhere. */
    private static final double METRES_PER_DEGREE = 111_700;

    private final SurveyPoints points;
    private final PointCells cells;
    private final double[] radiiM;

    /** Puts points together; their arrays are shared. */
    public PointOrder(SurveyPoints points) {
        this.points = points;
        cells = PointCells.of(points.north(), points.east(), points.elevationM());
        radiiM = points.plane() ? new double[0] : radii(cells);
    }

    /**
     * Radii of circles around the middles of the tiles in any frame: no way from the middle of a box is longer than the straight one in
     * degrees, each of them taken as long as anywhere in it.
     */
    private static double[] radii(PointCells cells) {
        double[] radii = new double[cells.count()];
        for (int tile = 0; tile < radii.length; tile++) {
            PointCells.Range latitudes = cells.x(tile);
            double nearest = latitudes.least() <= 0 && latitudes.most() >= 0 ? 0
                    : Math.min(Math.abs(latitudes.least()), Math.abs(latitudes.most()));
            double across = cells.y(tile).half() * Math.cos(Math.toRadians(nearest));
            radii[tile] = METRES_PER_DEGREE * Math.hypot(latitudes.half(), across) * MOST_STRETCH + 1;
        }
        return radii;
    }

    /** Returns the radius of a circle around the middle of each tile, metres; shared, not to be changed. None for points on a plane. */
    double[] radiiM() {
        return radiiM;
    }

    /** Returns the points. */
    public SurveyPoints points() {
        return points;
    }

    /** Returns the tiles: what each lies within from south to north and from west to east, degrees or metres, and its highest elevation. */
    PointCells cells() {
        return cells;
    }

    /** Returns the map of a frame over all points, as {@link FrameMap#over(SiteFrame, double[], double[])} makes it. */
    Optional<FrameMap> map(SiteFrame frame) {
        return cells.points() < FrameMap.LEAST_POINTS ? Optional.empty()
                : FrameMap.over(frame, FrameMap.Axis.of(cells.y().least(), cells.y().most()),
                        FrameMap.Axis.of(cells.x().least(), cells.x().most()));
    }
}
