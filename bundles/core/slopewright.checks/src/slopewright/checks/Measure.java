package slopewright.checks;

import java.util.Objects;

/**
 * A number against its limit, as computed. Both come from a model that keeps millimetres and millionths of a degree, so a value that is
 * on the bad side by no more than that is at the limit.
 *
 * @param value      the measured value
 * @param limit      the limit that decides
 * @param margin     how far the value is on the good side; negative on the bad side
 * @param unit       unit of all three: {@code m}, {@code deg}, {@code min}, {@code %}, {@code V}; empty for a plain number
 * @param resolution how far on the bad side still counts as at the limit, in the unit; what the model can hold
 */
public record Measure(double value, double limit, double margin, String unit, double resolution) {
    /** What a length of the model can hold, metres. */
    public static final double LENGTH_M = 0.001;
    /** What an angle of the model can hold, decimal degrees. */
    public static final double ANGLE_DEG = 1e-6;
    private static final double MINUTES_PER_DEGREE = 60;
    private static final double ROUNDING = 1e-9;

    /** Refuses a missing unit and numbers that are none. */
    public Measure {
        Objects.requireNonNull(unit);
        if (Double.isNaN(value) || Double.isNaN(limit) || Double.isNaN(margin)) {
            throw new IllegalArgumentException("a measure needs numbers");
        }
    }

    /** Makes a measure of which less is better. */
    public static Measure atMost(double value, double limit, String unit) {
        return new Measure(value, limit, limit - value, unit, resolution(unit));
    }

    /** Makes a measure of which more is better. */
    public static Measure atLeast(double value, double limit, String unit) {
        return new Measure(value, limit, value - limit, unit, resolution(unit));
    }

    /** Makes a measure that must lie around a wanted value: its deviation against the tolerance. */
    public static Measure within(double value, double wanted, double tolerance, String unit) {
        return atMost(Math.abs(value - wanted), tolerance, unit);
    }

    /** Makes a measure that must lie between two limits: against the nearer one. */
    public static Measure between(double value, double least, double most, String unit) {
        return value - least < most - value ? atLeast(value, least, unit) : atMost(value, most, unit);
    }

    private static double resolution(String unit) {
        return switch (unit) {
            case "m" -> LENGTH_M;
            case "deg" -> ANGLE_DEG;
            case "min" -> ANGLE_DEG * MINUTES_PER_DEGREE;
            default -> ROUNDING;
        };
    }

    /** Returns the same measure without any resolution but that of the computation: for limits that nothing may pass. */
    public Measure strict() {
        return resolvedTo(ROUNDING);
    }

    /** Returns the same measure with another resolution, in its unit. */
    public Measure resolvedTo(double other) {
        return new Measure(value, limit, margin, unit, other);
    }

    /** Returns whether the value is on the good side, within the resolution. */
    public boolean isMet() {
        return margin >= -resolution - ROUNDING;
    }

    /** Returns how far the value is from failing: the margin with the resolution; negative where it fails. */
    public double slack() {
        return margin + resolution;
    }

    /** Returns the one of two measures of one unit that is nearer to failing; the first where they are even. */
    public static Measure worse(Measure first, Measure second) {
        return second.slack() < first.slack() ? second : first;
    }
}
