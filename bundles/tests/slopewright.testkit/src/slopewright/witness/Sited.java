package slopewright.witness;

/**
 * A solved siting.
 *
 * @param distanceM threshold (or hover point) to the row, wing bar, near bar, unit or rear panel, metres
 * @param exactDistanceM the same with every level difference made good, metres; differs only under icao:5th within 0.3 m
 * @param layout the units as placed
 * @param lowestOnSlopeDeg lowest on-slope angle after any allowance, degrees
 * @param mehtM least on-slope eye height over the threshold, metres
 * @param nominalEyeHeightM height of the nominal slope over the threshold, metres
 */
public record Sited(double distanceM, double exactDistanceM, Layout layout, double lowestOnSlopeDeg, double mehtM,
        double nominalEyeHeightM) {

    /** Wheel clearance over the threshold on the lowest on-slope signal, metres. */
    public double wheelClearanceM(double eyeToWheelM) {
        return mehtM - eyeToWheelM;
    }
}
