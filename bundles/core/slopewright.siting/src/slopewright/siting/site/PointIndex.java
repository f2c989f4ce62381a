package slopewright.siting.site;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import slopewright.geometry.FramePoint;

/**
 * Points of a whole country in cells of a hundredth of a degree, so that those around one runway end are found without looking at the
 * others. What is found stands where {@link SurveyPoints#toFrame} puts it, to the last bit. Immutable, safe for many threads at once.
 */
public final class PointIndex {

    private static final double CELL_DEG = 0.01;
    private static final int COLUMNS = 36_000;
    private static final int ROWS = 18_000;
    private static final double METRES_PER_DEGREE = 111_000;
    private static final double HALF_TURN_DEG = 180;
    /** Nearer to a pole than that all points are looked at. */
    private static final double MOST_LATITUDE_DEG = 88;
    private static final double ALL_AROUND_DEG = 170;
    /** How far the edge of what is asked for may bend between two of its places, metres, and more. */
    private static final double SPARE_M = 500;

    private final SurveyPoints points;
    private final long[] keys;
    private final Optional<FrameMap.Axis> longitudes;
    private final Optional<FrameMap.Axis> latitudes;

    /**
     * What lies in and around an outline.
     *
     * @param indices of the points, rising
     * @param places  of the same points in the frame
     * @param covered whether the outline lies within the box of all points; beyond it nobody knows what stands there
     */
    public record Near(int[] indices, SurveyPoints.InFrame places, boolean covered) {
    }

    /** A box around an outline; longitudes count from one of them. */
    private record Box(double south, double north, double west, double east) {
    }

    /**
     * Puts points into cells.
     *
     * @param points the points, latitudes and longitudes
     * @throws IllegalArgumentException where they are on a local plane
     */
    public PointIndex(SurveyPoints points) {
        if (points.plane()) {
            throw new IllegalArgumentException("points on a local plane lie nowhere on Earth");
        }
        this.points = points;
        keys = IntStream.range(0, points.count()).parallel()
                .mapToLong(i -> cell(row(points.north()[i]), column(points.east()[i])) << Integer.SIZE | i).sorted().toArray();
        longitudes = points.count() == 0 ? Optional.empty() : Optional.of(FrameMap.Axis.of(points.east()));
        latitudes = points.count() == 0 ? Optional.empty() : Optional.of(FrameMap.Axis.of(points.north()));
    }

    private static long cell(long row, long column) {
        return row * COLUMNS + column;
    }

    private static int row(double latitudeDeg) {
        return (int) Math.max(0, Math.min(ROWS - 1.0, Math.floor((latitudeDeg + HALF_TURN_DEG / 2) / CELL_DEG)));
    }

    private static int column(double longitudeDeg) {
        return Math.floorMod((int) Math.floor((longitudeDeg + HALF_TURN_DEG) / CELL_DEG), COLUMNS);
    }

    /** Returns all points. */
    public SurveyPoints points() {
        return points;
    }

    /**
     * Returns the points in and around an outline.
     *
     * @param frame   a frame, not on a local plane
     * @param outline places along the edge of what is asked for, near enough to each other that it is as good as straight between them
     * @param marginM how far outside of it a point may still count, metres
     */
    public Near near(SiteFrame frame, List<FramePoint> outline, double marginM) {
        List<SiteFrame.LatLon> edge = outline.stream().map(point -> frame.latLon(point)
                .orElseThrow(() -> new IllegalArgumentException("the frame is on a local plane"))).toList();
        double middle = edge.get(0).longitudeDeg();
        double[] north = edge.stream().mapToDouble(SiteFrame.LatLon::latitudeDeg).toArray();
        double[] east = edge.stream().mapToDouble(place -> Math.IEEEremainder(place.longitudeDeg() - middle, 2 * HALF_TURN_DEG)).toArray();
        Box bare = new Box(Arrays.stream(north).min().orElseThrow(), Arrays.stream(north).max().orElseThrow(),
                Arrays.stream(east).min().orElseThrow(), Arrays.stream(east).max().orElseThrow());
        int[] indices = indices(bare, middle, marginM + SPARE_M);
        return new Near(indices, places(frame, indices), isCovered(bare, middle) && (!isAllAround() || indices.length > 0));
    }

    private int[] indices(Box bare, double middle, double spareM) {
        double up = spareM / METRES_PER_DEGREE;
        double farthest = Math.max(Math.abs(bare.south() - up), Math.abs(bare.north() + up));
        if (farthest > MOST_LATITUDE_DEG) {
            return IntStream.range(0, points.count()).toArray();
        }
        double across = up / Math.cos(Math.toRadians(farthest));
        int first = column(middle + bare.west() - across);
        int last = column(middle + bare.east() + across);
        IntStream.Builder found = IntStream.builder();
        for (int row = row(bare.south() - up); row <= row(bare.north() + up); row++) {
            if (first <= last) {
                take(cell(row, first), cell(row, last), found);
            } else {
                take(cell(row, first), cell(row, COLUMNS - 1L), found);
                take(cell(row, 0), cell(row, last), found);
            }
        }
        return found.build().sorted().toArray();
    }

    private void take(long from, long to, IntStream.Builder found) {
        int begin = Arrays.binarySearch(keys, from << Integer.SIZE);
        for (int i = begin < 0 ? -begin - 1 : begin; i < keys.length && keys[i] >> Integer.SIZE <= to; i++) {
            found.add((int) keys[i]);
        }
    }

    private SurveyPoints.InFrame places(SiteFrame frame, int[] indices) {
        Optional<FrameMap> map = points.count() < FrameMap.LEAST_POINTS ? Optional.empty()
                : FrameMap.over(frame, longitudes.orElseThrow(), latitudes.orElseThrow());
        SurveyPoints.InFrame places = new SurveyPoints.InFrame(new double[indices.length], new double[indices.length],
                new double[indices.length]);
        double[] place = FrameMap.place();
        for (int i = 0; i < indices.length; i++) {
            points.toFrame(frame, map, indices[i], i, places, place);
        }
        return places;
    }

    /** Points on both sides of the antimeridian have a box all around the Earth, which says nothing. */
    private boolean isAllAround() {
        return longitudes.orElseThrow().half() > ALL_AROUND_DEG;
    }

    private boolean isCovered(Box bare, double middle) {
        if (points.count() == 0) {
            return false;
        }
        FrameMap.Axis up = latitudes.orElseThrow();
        FrameMap.Axis across = longitudes.orElseThrow();
        double west = Math.IEEEremainder(middle + bare.west() - across.middle(), 2 * HALF_TURN_DEG);
        double east = west + bare.east() - bare.west();
        return bare.south() >= up.middle() - up.half() && bare.north() <= up.middle() + up.half() && west >= -across.half()
                && east <= across.half();
    }
}
