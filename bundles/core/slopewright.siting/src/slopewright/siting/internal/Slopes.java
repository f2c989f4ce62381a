package slopewright.siting.internal;

import slopewright.geometry.Lengths;
import slopewright.messages.Message;
import slopewright.messages.Notation;
import slopewright.messages.Words;
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
                throw new SitingException(Message.of("siting.refused.descent"));
            }
            double slope = fromDescentDeg(speed, descent);
            reader.note(Message.of("siting.note.descent", Words.degrees(slope), Words.quantity(speed, Notation.KNOTS),
                    Words.quantity(descent, Notation.FEET_PER_MINUTE)));
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
            throw new SitingException(Message.of("siting.refused.slope", Input.SLOPE.message(), Words.degrees(slope),
                    Words.wholeDegrees(LEAST_DEG), Words.wholeDegrees(MOST_DEG)));
        }
        return slope;
    }
}
