package slopewright.witness;

/** Slope from speed and rate of descent (US pack 10.1). */
public final class Descent {
    private static final double FEET_A_MINUTE_PER_KNOT = Angles.NAUTICAL_MILE_M / Angles.FOOT_M / 60;

    private Descent() {
    }

    /** Path angle from ground speed in knots and rate of descent in feet a minute, tangent form, degrees. */
    public static double slopeDeg(double groundSpeedKt, double descentFtMin) {
        return Angles.atanDeg(descentFtMin / (FEET_A_MINUTE_PER_KNOT * groundSpeedKt));
    }

    /** Path angle from speed along the path in knots, sine form, degrees. */
    public static double slopeAlongPathDeg(double pathSpeedKt, double descentFtMin) {
        return Math.toDegrees(Math.asin(descentFtMin / (FEET_A_MINUTE_PER_KNOT * pathSpeedKt)));
    }

    /** Rate of descent in feet a minute for a path angle and a ground speed in knots, tangent form. */
    public static double descentFtMin(double slopeDeg, double groundSpeedKt) {
        return FEET_A_MINUTE_PER_KNOT * groundSpeedKt * Angles.tanDeg(slopeDeg);
    }

    /** Rate of descent in feet a minute for a path angle and a speed along the path in knots, sine form. */
    public static double descentAlongPathFtMin(double slopeDeg, double pathSpeedKt) {
        return FEET_A_MINUTE_PER_KNOT * pathSpeedKt * Math.sin(Math.toRadians(slopeDeg));
    }
}
