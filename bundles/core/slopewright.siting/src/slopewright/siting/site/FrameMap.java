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

    private static final int NODES = 9;
    private static final int HELD_AGAINST = 17;
    private static final double MOST_OFF_M = 1e-7;
    private static final double MOST_BOX_DEG = 2;
    private static final double MOST_LATITUDE_DEG = 89;

    private final Axis x;
    private final Axis y;
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

    private FrameMap(Axis x, Axis y, double[] along, double[] right) {
        this.x = x;
        this.y = y;
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
        double[][] alongAt = new double[NODES][NODES];
        double[][] rightAt = new double[NODES][NODES];
        for (int j = 0; j < NODES; j++) {
            for (int i = 0; i < NODES; i++) {
                FramePoint point = exact(frame, x.node(i, NODES), y.node(j, NODES));
                alongAt[j][i] = point.alongM();
                rightAt[j][i] = point.rightM();
            }
        }
        FrameMap map = new FrameMap(x, y, coefficients(alongAt), coefficients(rightAt));
        return map.isExact(frame) ? Optional.of(map) : Optional.empty();
    }

    private static FramePoint exact(SiteFrame frame, double longitude, double latitude) {
        return frame.toFrame(new GridPoint(longitude, latitude), frame.originElevationM());
    }

    /** The coefficients of the polynomial through the values at the nodes, row after row: a cosine transform both ways. */
    private static double[] coefficients(double[][] values) {
        double[] found = new double[NODES * NODES];
        for (int m = 0; m < NODES; m++) {
            for (int n = 0; n < NODES; n++) {
                double sum = 0;
                for (int j = 0; j < NODES; j++) {
                    for (int i = 0; i < NODES; i++) {
                        sum += values[j][i] * Math.cos(Math.PI * m * (j + 0.5) / NODES) * Math.cos(Math.PI * n * (i + 0.5) / NODES);
                    }
                }
                found[m * NODES + n] = sum * (m == 0 ? 1 : 2) * (n == 0 ? 1 : 2) / (NODES * NODES);
            }
        }
        return found;
    }

    private boolean isExact(SiteFrame frame) {
        double[] place = place();
        for (int j = 0; j <= HELD_AGAINST; j++) {
            for (int i = 0; i <= HELD_AGAINST; i++) {
                double longitude = x.middle() + x.half() * (2.0 * i / HELD_AGAINST - 1);
                double latitude = y.middle() + y.half() * (2.0 * j / HELD_AGAINST - 1);
                FramePoint exact = exact(frame, longitude, latitude);
                map(longitude, latitude, place);
                if (!(Math.hypot(place[0] - exact.alongM(), place[1] - exact.rightM()) <= MOST_OFF_M)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Returns what {@link #map} writes into: a place and room to work in, for one thread. */
    static double[] place() {
        return new double[2 + 2 * NODES];
    }

    /**
     * Brings a place into the frame.
     *
     * @param longitude decimal degrees, within the box
     * @param latitude  decimal degrees, within the box
     * @param place     receives metres along and to the right as its first two numbers; of {@link #place()}
     */
    void map(double longitude, double latitude, double[] place) {
        polynomials(x.scaled(longitude), place, 2);
        polynomials(y.scaled(latitude), place, 2 + NODES);
        double alongM = 0;
        double rightM = 0;
        for (int m = 0; m < NODES; m++) {
            double alongRow = 0;
            double rightRow = 0;
            for (int n = 0; n < NODES; n++) {
                alongRow += along[m * NODES + n] * place[2 + n];
                rightRow += right[m * NODES + n] * place[2 + n];
            }
            alongM += alongRow * place[2 + NODES + m];
            rightM += rightRow * place[2 + NODES + m];
        }
        place[0] = alongM;
        place[1] = rightM;
    }

    /** The polynomials of Chebyshev up to the degree of the map. */
    private static void polynomials(double at, double[] into, int from) {
        into[from] = 1;
        into[from + 1] = at;
        for (int n = from + 2; n < from + NODES; n++) {
            into[n] = 2 * at * into[n - 1] - into[n - 2];
        }
    }
}
