package slopewright.witness;

import java.util.List;

/** Angles and lengths in other units, and root finding by halving. */
public final class Angles {
    /** Metres in a foot. */
    public static final double FOOT_M = 0.3048;
    /** Metres in a nautical mile. */
    public static final double NAUTICAL_MILE_M = 1852;
    /** Metres in a statute mile. */
    public static final double STATUTE_MILE_M = 1609.344;

    private Angles() {
    }

    /** A condition on a number, false below some place and true above it. */
    @FunctionalInterface
    public interface Condition {
        /** Whether the condition holds at the number. */
        boolean holds(double at);
    }

    /** Tangent of an angle in degrees. */
    public static double tanDeg(double angleDeg) {
        return Math.tan(Math.toRadians(angleDeg));
    }

    /** Angle in degrees whose tangent is given. */
    public static double atanDeg(double tangent) {
        return Math.toDegrees(Math.atan(tangent));
    }

    /** Degrees and minutes to degrees. */
    public static double deg(double wholeDeg, double minutes) {
        return wholeDeg + minutes / 60;
    }

    /** Halves the interval until only the place is left where the condition changes from its value at {@code low}. */
    public static double change(double low, double high, Condition condition) {
        boolean atLow = condition.holds(low);
        double from = low;
        double to = high;
        for (int i = 0; i < 200 && to - from > 1e-12 * Math.max(1, Math.abs(to)); i++) {
            double middle = 0.5 * (from + to);
            if (condition.holds(middle) == atLow) {
                from = middle;
            } else {
                to = middle;
            }
        }
        return 0.5 * (from + to);
    }

    /** First place where the condition turns true, which it does once at most between two neighbouring places; NaN where it never does. */
    public static double firstTrue(List<Double> places, Condition condition) {
        double before = places.get(0);
        for (double here : places) {
            if (condition.holds(here)) {
                return here == before ? here : change(before, here, condition);
            }
            before = here;
        }
        return Double.NaN;
    }

    /** First place, walking from {@code low} in steps, where the condition turns true; NaN where it never does. */
    public static double firstTrue(double low, double high, double step, Condition condition) {
        double before = low;
        if (condition.holds(low)) {
            return low;
        }
        for (int i = 1; before < high; i++) {
            double here = Math.min(high, low + i * step);
            if (condition.holds(here)) {
                return change(before, here, condition);
            }
            before = here;
        }
        return Double.NaN;
    }
}
