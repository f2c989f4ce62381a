package slopewright.siting.site;

import java.util.Arrays;
import java.util.Optional;

import slopewright.geometry.FramePoint;

/**
 * The frame of a site over a box of latitudes and longitudes, as polynomials that run through it at the places of Chebyshev: some hundred
 * thousand points are brought into the frame by them ten times as fast as by a geodesic each. Between those places it is held against the
 * geodesic, and where it is off by more than a ten-millionth of a metre anywhere there is none. Immutable, safe for many threads at once.
 */
final class FrameMap {

    /** Fewer points are brought into the frame one by one: the map itself takes some four hundred geodesics. */
    static final int LEAST_POINTS = 2000;

    /** The fewest that are exact enough are taken: the work on a point grows with their square. */
    private static final int[] NODES = {4, 5, 6, 7, 9};
    private static final int MOST_NODES = 9;
    private static final int HELD_AGAINST = 17;
    private static final double MOST_OFF_M = 1e-7;
    private static final double MOST_BOX_DEG = 2;
    private static final double MOST_LATITUDE_DEG = 89;

    private final Axis x;
    private final Axis y;
    private final int nodes;
    private final double[] along;
    private final double[] right;

    /** A range of degrees as numbers from minus one to one. */
    record Axis(double middle, double half) {

        static Axis of(double[] degrees) {
            return of(Arrays.stream(degrees).min().orElseThrow(), Arrays.stream(degrees).max().orElseThrow());
        }

        static Axis of(double least, double most) {
            return new Axis((least + most) / 2, Math.max((most - least) / 2, 1e-9));
        }

        double scaled(double degrees) {
            return (degrees - middle) / half;
        }

        double node(int index, int count) {
            return middle + half * Math.cos(Math.PI * (index + 0.5) / count);
        }
    }

    private FrameMap(Axis x, Axis y, int nodes, double[] along, double[] right) {
        this.x = x;
        this.y = y;
        this.nodes = nodes;
        this.along = along;
        this.right = right;
    }

    /**
     * Makes the map over some points.
     *
     * @param frame      the frame, not on a plane
     * @param longitudes decimal degrees
     * @param latitudes  decimal degrees
     * @return the map; empty where there are few points, where they lie far apart or near a pole, or where the map is not exact enough
     */
    static Optional<FrameMap> over(SiteFrame frame, double[] longitudes, double[] latitudes) {
        return longitudes.length < LEAST_POINTS ? Optional.empty() : over(frame, Axis.of(longitudes), Axis.of(latitudes));
    }

    /** Makes the map over a box of longitudes and latitudes in which enough points lie, or none, as above. */
    static Optional<FrameMap> over(SiteFrame frame, Axis x, Axis y) {
        boolean small = x.half() <= MOST_BOX_DEG / 2 && y.half() <= MOST_BOX_DEG / 2;
        if (!small || Math.abs(y.middle()) + y.half() > MOST_LATITUDE_DEG) {
            return Optional.empty();
        }
        FramePoint[] exact = heldAgainst(frame, x, y);
        return Arrays.stream(NODES).mapToObj(nodes -> through(frame, x, y, nodes)).filter(map -> map.isExact(exact)).findFirst();
    }

    /** Makes the polynomials that run through the frame at so many places of either axis. */
    private static FrameMap through(SiteFrame frame, Axis x, Axis y, int nodes) {
        double[][] alongAt = new double[nodes][nodes];
        double[][] rightAt = new double[nodes][nodes];
        for (int j = 0; j < nodes; j++) {
            for (int i = 0; i < nodes; i++) {
                FramePoint point = exact(frame, x.node(i, nodes), y.node(j, nodes));
                alongAt[j][i] = point.alongM();
                rightAt[j][i] = point.rightM();
            }
        }
        return new FrameMap(x, y, nodes, coefficients(alongAt), coefficients(rightAt));
    }

    private static FramePoint exact(SiteFrame frame, double longitude, double latitude) {
        return frame.toFrame(new GridPoint(longitude, latitude), frame.originElevationM());
    }

    /** The coefficients of the polynomial through the values at the nodes, row after row: a cosine transform both ways. */
    private static double[] coefficients(double[][] values) {
        int nodes = values.length;
        double[] found = new double[nodes * nodes];
        for (int m = 0; m < nodes; m++) {
            for (int n = 0; n < nodes; n++) {
                double sum = 0;
                for (int j = 0; j < nodes; j++) {
                    for (int i = 0; i < nodes; i++) {
                        sum += values[j][i] * Math.cos(Math.PI * m * (j + 0.5) / nodes) * Math.cos(Math.PI * n * (i + 0.5) / nodes);
                    }
                }
                found[m * nodes + n] = sum * (m == 0 ? 1 : 2) * (n == 0 ? 1 : 2) / (nodes * nodes);
            }
        }
        return found;
    }

    /** The places between those of the polynomials, by the geodesic. */
    private static FramePoint[] heldAgainst(SiteFrame frame, Axis x, Axis y) {
        FramePoint[] all = new FramePoint[(HELD_AGAINST + 1) * (HELD_AGAINST + 1)];
        Arrays.setAll(all, at -> exact(frame, between(x, at % (HELD_AGAINST + 1)), between(y, at / (HELD_AGAINST + 1))));
        return all;
    }

    private static double between(Axis axis, int step) {
        return axis.middle() + axis.half() * (2.0 * step / HELD_AGAINST - 1);
    }

    private boolean isExact(FramePoint[] exact) {
        double[] place = place();
        for (int at = 0; at < exact.length; at++) {
            map(between(x, at % (HELD_AGAINST + 1)), between(y, at / (HELD_AGAINST + 1)), place);
            if (!(Math.hypot(place[0] - exact[at].alongM(), place[1] - exact[at].rightM()) <= MOST_OFF_M)) {
                return false;
            }
        }
        return true;
    }

    /** Returns what {@link #map} writes into: a place and room to work in, for one thread. */
    static double[] place() {
        return new double[2 + 2 * MOST_NODES];
    }

    /**
     * Brings a place into the frame.
     *
     * @param longitude decimal degrees, within the box
     * @param latitude  decimal degrees, within the box
     * @param place     receives metres along and to the right as its first two numbers; of {@link #place()}
     */
    void map(double longitude, double latitude, double[] place) {
        int second = 2 + nodes;
        polynomials(x.scaled(longitude), place, 2);
        polynomials(y.scaled(latitude), place, second);
        double alongM = 0;
        double rightM = 0;
        int at = 0;
        for (int m = 0; m < nodes; m++) {
            double alongRow = 0;
            double rightRow = 0;
            for (int n = 2; n < second; n++, at++) {
                alongRow += along[at] * place[n];
                rightRow += right[at] * place[n];
            }
            alongM += alongRow * place[second + m];
            rightM += rightRow * place[second + m];
        }
        place[0] = alongM;
        place[1] = rightM;
    }

    /**
     * Brings places into the frame where they stand, as {@link #map(double, double, double[])} does.
     *
     * @param places           longitudes and latitudes within the box, decimal degrees, and elevations, metres; changed
     * @param originElevationM elevation of the origin of the frame, metres
     */
    void map(SurveyPoints.InFrame places, double originElevationM) {
        double[] place = place();
        for (int at = 0; at < places.alongM().length; at++) {
            map(places.alongM()[at], places.rightM()[at], place);
            places.alongM()[at] = place[0];
            places.rightM()[at] = place[1];
            places.heightM()[at] = places.heightM()[at] - originElevationM;
        }
    }

    /** The polynomials of Chebyshev up to the degree of the map. */
    private void polynomials(double at, double[] into, int from) {
        into[from] = 1;
        into[from + 1] = at;
        for (int n = from + 2; n < from + nodes; n++) {
            into[n] = 2 * at * into[n - 1] - into[n - 2];
        }
    }
}
