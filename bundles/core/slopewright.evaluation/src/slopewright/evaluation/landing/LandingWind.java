package slopewright.evaluation.landing;

/**
 * A steady wind at the site.
 *
 * @param fromTrueDeg direction from which it blows, decimal degrees from true north
 * @param speedKt     its speed, knots, zero or more
 */
public record LandingWind(double fromTrueDeg, double speedKt) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException where one is not finite, or the speed is negative
     */
    public LandingWind {
        if (!Double.isFinite(fromTrueDeg) || !Double.isFinite(speedKt) || speedKt < 0) {
            throw new IllegalArgumentException("a wind needs a direction and a speed of zero or more");
        }
    }

    /** Returns the part against a landing direction, knots; negative where it blows from behind. */
    public double headwindKt(double landingTrueDeg) {
        return speedKt * Math.cos(Math.toRadians(fromTrueDeg - landingTrueDeg));
    }

    /** Returns the part across a landing direction, knots; from the right positive. */
    public double crosswindKt(double landingTrueDeg) {
        return speedKt * Math.sin(Math.toRadians(fromTrueDeg - landingTrueDeg));
    }
}
