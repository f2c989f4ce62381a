package slopewright.drawing.pilot;

import slopewright.geometry.FramePoint;
import slopewright.siting.Siting;

/**
 * An approach flown at a constant ground speed to the threshold or hover point: a path through the reference point of the indicator,
 * with a lasting deviation and a slow weave.
 *
 * @param startM        distance before the threshold or hover point where it begins, metres
 * @param groundSpeedKt ground speed, knots
 * @param pathDeg       elevation of the path at the reference point, decimal degrees
 * @param offsetDeg     lasting deviation from the path, decimal degrees, high positive
 * @param weaveDeg      greatest deviation of the weave to each side, decimal degrees
 * @param weaveS        how long a weave lasts from high to high, seconds
 * @param rightM        distance to the right of the centre line, metres
 */
public record FlownApproach(double startM, double groundSpeedKt, double pathDeg, double offsetDeg, double weaveDeg, double weaveS,
        double rightM) {

    private static final double MPS_PER_KNOT = 1852.0 / 3600;
    private static final double STEEPEST_DEG = 45;

    /** Refuses numbers out of range; the message says which. */
    public FlownApproach {
        need(startM > 0 && startM <= 100_000, "the start must be more than 0 and at most 100 km before the threshold");
        need(groundSpeedKt > 0 && groundSpeedKt <= 500, "the ground speed must be more than 0 and at most 500 kt");
        need(pathDeg > 0 && pathDeg < STEEPEST_DEG, "the path must be more than 0° and less than 45°");
        need(Math.abs(offsetDeg) + Math.abs(weaveDeg) <= STEEPEST_DEG, "the deviations must be 45° or less");
        need(weaveS > 0, "the period of the weave must be more than 0 s");
        need(Double.isFinite(rightM), "the distance to the side must be a number");
    }

    private static void need(boolean holds, String otherwise) {
        if (!holds) {
            throw new IllegalArgumentException(otherwise);
        }
    }

    /** Returns how long the approach lasts, seconds. */
    public double durationS() {
        return startM / (groundSpeedKt * MPS_PER_KNOT);
    }

    /** Returns the distance before the threshold or hover point after a time, metres; zero from its end on. */
    public double beforeM(double timeS) {
        double shareLeft = 1 - Math.max(0, Math.min(1, timeS / durationS()));
        return startM * shareLeft;
    }

    /** Returns the deviation from the path after a time, decimal degrees, high positive. */
    public double deviationDeg(double timeS) {
        return offsetDeg + weaveDeg * Math.sin(2 * Math.PI * timeS / weaveS);
    }

    /**
     * Returns the eye after a time.
     *
     * @param timeS  seconds from the start; before it the eye is at the start, after the end at the threshold or hover point
     * @param siting the indicator whose reference point the path passes through
     * @return the eye, not below the ground at the origin
     */
    public FramePoint eyeAt(double timeS, Siting siting) {
        double within = Math.max(0, Math.min(durationS(), timeS));
        FramePoint eye = PilotPicture.eyeAt(siting, beforeM(within), pathDeg + deviationDeg(within));
        return new FramePoint(eye.alongM(), rightM, Math.max(0, eye.heightM()));
    }
}
