package slopewright.siting.descent;

import slopewright.geometry.Angles;
import slopewright.geometry.Lengths;
import slopewright.messages.Message;
import slopewright.siting.SitingException;

/** How a rate of descent and a speed make a path angle. The two differ by 0.1 per cent on 3 degrees and by 1.5 per cent on 10. */
public enum DescentForm {

    /** The speed is reckoned over the ground: the tangent of the angle is descent over speed. */
    TANGENT("tangent"),
    /** The speed is reckoned along the path: the sine of the angle is descent over speed. */
    SINE("sine");

    /** Feet a minute in one knot: 1852 m an hour, exact. */
    public static final double FEET_A_MINUTE_PER_KNOT = Lengths.METRES_PER_NAUTICAL_MILE / Lengths.METRES_PER_FOOT / 60;

    private final String key;

    DescentForm(String key) {
        this.key = key;
    }

    /** Returns the name of the form, as cards and output print it. */
    public String key() {
        return key;
    }

    /**
     * Returns the path angle.
     *
     * @param speedKt      speed over the ground or along the path, knots, more than zero
     * @param descentFtMin rate of descent, feet a minute, more than zero
     * @return decimal degrees
     * @throws SitingException where a number is not more than zero, or the descent is faster than the speed along the path
     */
    public double angleDeg(double speedKt, double descentFtMin) {
        if (!(speedKt > 0) || !(descentFtMin > 0)) {
            throw new SitingException(Message.of("descent.zero"));
        }
        double ratio = descentFtMin / (FEET_A_MINUTE_PER_KNOT * speedKt);
        if (this == SINE && ratio > 1) {
            throw new SitingException(Message.of("descent.too-fast"));
        }
        return Math.toDegrees(this == TANGENT ? Math.atan(ratio) : Math.asin(ratio));
    }

    /**
     * Returns the rate of descent.
     *
     * @param speedKt  speed over the ground or along the path, knots
     * @param angleDeg path angle, decimal degrees
     * @return feet a minute
     */
    public double descentFtMin(double speedKt, double angleDeg) {
        double share = this == TANGENT ? Angles.tanDeg(angleDeg) : Math.sin(Math.toRadians(angleDeg));
        return FEET_A_MINUTE_PER_KNOT * speedKt * share;
    }

    /** Returns the descent in feet for each nautical mile over the ground. */
    public static double feetPerNauticalMile(double angleDeg) {
        return Lengths.metresToFeet(Lengths.METRES_PER_NAUTICAL_MILE) * Angles.tanDeg(angleDeg);
    }
}
