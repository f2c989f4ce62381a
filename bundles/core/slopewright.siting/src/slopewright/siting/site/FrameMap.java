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
    /** So many places are worked out together. */
    private static final int RUN = 256;
    /** Of fewer than these each is worked out by itself. */
    private static final int FEW = 32;
    private static final double MOST_BOX_DEG = 2;
    private static final double MOST_LATITUDE_DEG = 89;

    private final Axis x;
    private final Axis y;
    private final int nodes;
    private final double[] along;
    private final double[] right;
    private final ThreadLocal<Run> scratch = ThreadLocal.withInitial(Run::new);

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
     * Brings places into the frame where they stand, to the last bit as {@link #map(double, double, double[])} does: the operations on a
     * place and their order are the same, but each step is a loop of its own over places, so that a machine takes several at a time.
     *
     * @param eastDeg  longitudes within the box, decimal degrees; receives metres along
     * @param northDeg latitudes within the box, decimal degrees; receives metres to the right
     */
    void map(double[] eastDeg, double[] northDeg) {
        if (eastDeg.length < FEW) {
            double[] place = place();
            for (int at = 0; at < eastDeg.length; at++) {
                map(eastDeg[at], northDeg[at], place);
                eastDeg[at] = place[0];
                northDeg[at] = place[1];
            }
        } else {
            Run run = scratch.get();
            for (int from = 0; from < eastDeg.length; from += RUN) {
                run.map(eastDeg, northDeg, from, Math.min(RUN, eastDeg.length - from));
            }
        }
    }

    /** Some places that are worked out together, in arrays that stay in the fastest memory. */
    private final class Run {
        private final double[][] ofX = new double[nodes][RUN];
        private final double[][] ofY = new double[nodes][RUN];
        private final double[] alongRow = new double[RUN];
        private final double[] rightRow = new double[RUN];
        private final double[] alongM = new double[RUN];
        private final double[] rightM = new double[RUN];

        void map(double[] east, double[] north, int from, int count) {
            polynomials(x, east, from, count, ofX);
            polynomials(y, north, from, count, ofY);
            Arrays.fill(alongM, 0);
            Arrays.fill(rightM, 0);
            for (int m = 0; m < nodes; m++) {
                Arrays.fill(alongRow, 0);
                Arrays.fill(rightRow, 0);
                for (int n = 0; n < nodes; n++) {
                    add(alongRow, along[m * nodes + n], ofX[n]);
                    add(rightRow, right[m * nodes + n], ofX[n]);
                }
                addProducts(alongM, alongRow, ofY[m]);
                addProducts(rightM, rightRow, ofY[m]);
            }
            System.arraycopy(alongM, 0, east, from, count);
            System.arraycopy(rightM, 0, north, from, count);
        }

        /** The polynomials of Chebyshev of some places; those beside them in the arrays are of no account. */
        private void polynomials(Axis axis, double[] degrees, int from, int count, double[][] into) {
            System.arraycopy(degrees, from, into[1], 0, count);
            double middle = axis.middle();
            double half = axis.half();
            double[] at = into[1];
            Arrays.fill(into[0], 1);
            for (int i = 0; i < RUN; i++) {
                at[i] = (at[i] - middle) / half;
            }
            for (int n = 2; n < nodes; n++) {
                next(at, into[n - 1], into[n - 2], into[n]);
            }
        }

        private static void next(double[] at, double[] last, double[] before, double[] into) {
            for (int i = 0; i < RUN; i++) {
                into[i] = 2 * at[i] * last[i] - before[i];
            }
        }

        private static void add(double[] sum, double factor, double[] values) {
            for (int i = 0; i < RUN; i++) {
                sum[i] = sum[i] + factor * values[i];
            }
        }

        private static void addProducts(double[] sum, double[] one, double[] other) {
            for (int i = 0; i < RUN; i++) {
                sum[i] = sum[i] + one[i] * other[i];
            }
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
