package slopewright.checks.internal;

/**
 * The resolution of a layout in the model: places to the millimetre, angles to the millionth of a degree. A value that misses its limit
 * by no more than that rounding is taken to be at the limit.
 */
final class SettingOut {

    /** Half a millimetre in each of two numbers. */
    static final double LENGTH_M = 0.001;

    /** What the rounding of place, lens and setting can do to an eye height together. */
    static final double EYE_HEIGHT_M = 0.002;

    private SettingOut() {
    }

    /** Returns a length, or its limit where the two differ by rounding alone. */
    static double length(double value, double limit) {
        return Math.abs(value - limit) <= LENGTH_M ? limit : value;
    }

    /** Returns an eye height or clearance, or its limit where the two differ by rounding alone. */
    static double height(double value, double limit) {
        return Math.abs(value - limit) <= EYE_HEIGHT_M ? limit : value;
    }
}
