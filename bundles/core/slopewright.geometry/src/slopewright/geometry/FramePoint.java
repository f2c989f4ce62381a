package slopewright.geometry;

/**
 * A point in the frame of a runway end or helipad.
 *
 * @param alongM  metres from the origin in the landing direction; negative on the approach side
 * @param rightM  metres to the right of the landing direction
 * @param heightM metres above the origin: a difference of elevations, without curvature
 */
public record FramePoint(double alongM, double rightM, double heightM) {

    /** Returns the point a share of the way to another: this one at 0, the other at 1. */
    public FramePoint towards(FramePoint other, double share) {
        return new FramePoint(alongM + (other.alongM - alongM) * share, rightM + (other.rightM - rightM) * share,
                heightM + (other.heightM - heightM) * share);
    }

    /** Returns the same place at another height. */
    public FramePoint atHeight(double newHeightM) {
        return new FramePoint(alongM, rightM, newHeightM);
    }

    /** Returns the distance in plan to another point, metres. */
    public double planDistanceM(FramePoint other) {
        return Math.hypot(alongM - other.alongM, rightM - other.rightM);
    }
}
