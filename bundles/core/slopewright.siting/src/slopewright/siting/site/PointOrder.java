package slopewright.siting.site;

import java.util.Arrays;
import java.util.Optional;

import slopewright.geometry.PointTiles;

/**
 * Survey points put together in tiles of neighbours, once for all frames that they are brought into. Immutable, safe for many threads at
 * once.
 */
public final class PointOrder {

    private final SurveyPoints points;
    private final int[] order;
    private final Box[] boxes;
    private final Optional<Axes> axes;

    /** What the points of a tile lie within: degrees or metres, and their highest elevation, metres. */
    record Box(double south, double north, double west, double east, double topM) {

        private static final Box NONE = new Box(Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY,
                Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY);

        private Box with(Box other) {
            return new Box(Math.min(south, other.south), Math.max(north, other.north), Math.min(west, other.west),
                    Math.max(east, other.east), Math.max(topM, other.topM));
        }
    }

    /** The longitudes and the latitudes of all points. */
    record Axes(FrameMap.Axis longitudes, FrameMap.Axis latitudes) {
    }

    /** Puts points together; their arrays are shared. */
    public PointOrder(SurveyPoints points) {
        this.points = points;
        order = PointTiles.neighbours(points.north(), points.east());
        boxes = new Box[(order.length + PointTiles.POINTS_IN_A_TILE - 1) / PointTiles.POINTS_IN_A_TILE];
        Arrays.parallelSetAll(boxes, tile -> box(tile * PointTiles.POINTS_IN_A_TILE,
                Math.min(order.length, (tile + 1) * PointTiles.POINTS_IN_A_TILE)));
        Box all = Arrays.stream(boxes).reduce(Box.NONE, Box::with);
        axes = boxes.length == 0 ? Optional.empty()
                : Optional.of(new Axes(FrameMap.Axis.of(all.west, all.east), FrameMap.Axis.of(all.south, all.north)));
    }

    /** One column after the other: what is fetched from far apart is waited for together then, and not point by point. */
    private Box box(int from, int to) {
        return new Box(least(points.north(), from, to), most(points.north(), from, to), least(points.east(), from, to),
                most(points.east(), from, to), most(points.elevationM(), from, to));
    }

    private double least(double[] column, int from, int to) {
        double least = Double.POSITIVE_INFINITY;
        for (int at = from; at < to; at++) {
            least = Math.min(least, column[order[at]]);
        }
        return least;
    }

    private double most(double[] column, int from, int to) {
        double most = Double.NEGATIVE_INFINITY;
        for (int at = from; at < to; at++) {
            most = Math.max(most, column[order[at]]);
        }
        return most;
    }

    /** Returns the points. */
    public SurveyPoints points() {
        return points;
    }

    /** Returns their indices, tile after tile; shared, not to be changed. */
    int[] order() {
        return order;
    }

    /** Returns what a tile lies within. */
    Box box(int tile) {
        return boxes[tile];
    }

    /** Returns how many tiles there are. */
    int count() {
        return boxes.length;
    }

    /** Returns the map of a frame over all points, as {@link FrameMap#over(SiteFrame, double[], double[])} makes it. */
    Optional<FrameMap> map(SiteFrame frame) {
        return order.length < FrameMap.LEAST_POINTS ? Optional.empty()
                : axes.flatMap(all -> FrameMap.over(frame, all.longitudes(), all.latitudes()));
    }
}
