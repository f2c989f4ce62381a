package slopewright.geometry;

/**
 * How far the Earth curves away under a level line. Only lines of sight use this; surfaces and rules compare elevations and must
 * never be lowered by it.
 */
public final class Curvature {

    /** Mean radius of the Earth in metres (IUGG, GRS 80 arithmetic mean). */
    public static final double MEAN_RADIUS_M = 6371008.8;

    /** Usual terrestrial coefficient of refraction for light, common practice of survey. */
    public static final double USUAL_REFRACTION = 0.13;

    private Curvature() {
    }

    /**
     * Returns by how much the ground drops below a level line.
     *
     * @param distanceM  horizontal distance in metres
     * @param refraction coefficient of refraction; 0 for none, {@link #USUAL_REFRACTION} for light
     * @return metres, zero or more
     */
    public static double dropM(double distanceM, double refraction) {
        return distanceM * distanceM / (2 * MEAN_RADIUS_M) * (1 - refraction);
    }
}
