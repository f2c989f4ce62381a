package slopewright.geometry;

/** What files keep: millimetres and millionths of a degree. Limits and edges of bands compare within it. */
public final class StoredResolution {

    /** Lengths, metres. */
    public static final double LENGTH_M = 0.001;
    /** Angles, decimal degrees. */
    public static final double ANGLE_DEG = 1e-6;

    private StoredResolution() {
    }

    /**
     * Returns whether a length has reached the edge of a band. What was entered in feet and kept in millimetres counts as at the edge.
     *
     * @param lengthM metres
     * @param edgeM   lower edge of the band, metres
     * @return whether it lies in the band or above
     */
    public static boolean hasReached(double lengthM, double edgeM) {
        return lengthM >= edgeM - LENGTH_M;
    }
}
