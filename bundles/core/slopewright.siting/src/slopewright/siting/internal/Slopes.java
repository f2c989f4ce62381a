package slopewright.siting.internal;

import java.util.Locale;

import slopewright.geometry.Lengths;
import slopewright.siting.Input;
import slopewright.siting.SitingException;
import slopewright.siting.SitingRequest;

/** Works out the approach slope: entered, or from speed and rate of descent. */
final class Slopes {

    /** Feet a minute in one knot: 1852 m an hour, exact. */
    private static final double FEET_A_MINUTE_PER_KNOT = Lengths.METRES_PER_NAUTICAL_MILE / Lengths.METRES_PER_FOOT / 60;

    private static final double LEAST_DEG = 0.5;
    private static final double MOST_DEG = 20;

    private Slopes() {
    }

    static double slopeDeg(SitingRequest request, RuleReader reader) {
        if (!request.has(Input.SLOPE) && (request.has(Input.GROUND_SPEED) || request.has(Input.DESCENT))) {
            double speed = request.need(Input.GROUND_SPEED);
            double descent = request.need(Input.DESCENT);
            if (speed <= 0 || descent <= 0) {
                throw new SitingException("ground speed and rate of descent must be more than zero");
            }
            double slope = fromDescentDeg(speed, descent);
            reader.note(String.format(Locale.ROOT,
                    "The slope of %.2f° follows from %.0f kt over the ground and %.0f ft/min (tangent form).", slope,
                    speed, descent));
            return checked(slope);
        }
        return checked(request.need(Input.SLOPE));
    }

    /**
     * Returns the path angle of a descent, tangent form: the rate of descent over the speed along the ground.
     *
     * @param groundSpeedKt ground speed, knots
     * @param descentFtMin  rate of descent, feet a minute
     * @return decimal degrees
     */
    static double fromDescentDeg(double groundSpeedKt, double descentFtMin) {
        return Math.toDegrees(Math.atan(descentFtMin / (FEET_A_MINUTE_PER_KNOT * groundSpeedKt)));
    }

    private static double checked(double slope) {
        if (slope < LEAST_DEG || slope > MOST_DEG) {
            throw new SitingException(String.format(Locale.ROOT, "an approach slope (slope-deg) of %.3f° is outside %.1f° to %.0f°", slope,
                    LEAST_DEG,
                    MOST_DEG));
        }
        return slope;
    }
}
