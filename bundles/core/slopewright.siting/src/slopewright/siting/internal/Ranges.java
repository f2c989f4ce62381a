package slopewright.siting.internal;

import slopewright.geometry.Angles;

/** From how far the eye tells two lights apart. */
final class Ranges {

    private Ranges() {
    }

    /**
     * Returns the range from which two lights one behind the other on a slope still look apart: their vertical angle is spacing times
     * the sine of the slope over the range.
     *
     * @param spacingM      distance between the lights along the runway, metres
     * @param slopeDeg      slope of the line of sight, decimal degrees
     * @param resolutionDeg smallest angle that the eye splits, decimal degrees
     * @return metres
     */
    static double splitRangeM(double spacingM, double slopeDeg, double resolutionDeg) {
        return spacingM * Math.sin(Math.toRadians(slopeDeg)) / Angles.tanDeg(resolutionDeg);
    }
}
