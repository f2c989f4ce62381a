package slopewright.siting.magnetic;

/**
 * The main magnetic field at a place and time, in the directions of the ellipsoid.
 *
 * @param northNt part toward true north, nanotesla
 * @param eastNt  part toward true east, nanotesla
 * @param downNt  part straight down, nanotesla
 */
public record MagneticField(double northNt, double eastNt, double downNt) {

    /** Returns the horizontal field, nanotesla. */
    public double horizontalNt() {
        return Math.hypot(northNt, eastNt);
    }

    /** Returns the total field, nanotesla. */
    public double totalNt() {
        return Math.hypot(horizontalNt(), downNt);
    }

    /** Returns magnetic north from true north, decimal degrees, east positive. */
    public double declinationDeg() {
        return Math.toDegrees(Math.atan2(eastNt, northNt));
    }

    /** Returns the dip below the horizon, decimal degrees. */
    public double inclinationDeg() {
        return Math.toDegrees(Math.atan2(downNt, horizontalNt()));
    }
}
