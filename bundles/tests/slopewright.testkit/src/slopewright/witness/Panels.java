package slopewright.witness;

/**
 * Alignment panels: two outer panels nearer the approach and higher, one between them farther and lower (US pack 2.7).
 *
 * @param slopeDeg slope, degrees
 * @param rearAlongM distance of the middle panel from the threshold, metres
 * @param rearHeightM height of its top edge above the threshold, metres
 * @param spacingM distance between outer and middle panels along the approach, metres
 */
public record Panels(double slopeDeg, double rearAlongM, double rearHeightM, double spacingM) {

    /** Height by which the outer panels stand above the middle one, metres: spacing times tangent of the slope. */
    public double riseM() {
        return spacingM * Angles.tanDeg(slopeDeg);
    }

    /** The panels placed so that an eye on the slope is at a height over the threshold, walking along the ground. */
    public static Panels solve(double slopeDeg, double spacingM, Ground ground, double eyeHeightM) {
        double along = Siting.slopeDistanceM(ground, slopeDeg, eyeHeightM);
        return new Panels(slopeDeg, along, ground.lensM(along), spacingM);
    }

    /** Elevation of the eye at the middle panel, minutes of arc. */
    public double rearElevationMin(Eye eye) {
        return 60 * Angles.atanDeg((eye.heightM() - rearHeightM) / (rearAlongM - eye.alongM()));
    }

    /** Elevation of the eye at the outer panels, minutes of arc. */
    public double frontElevationMin(Eye eye) {
        return 60 * Angles.atanDeg((eye.heightM() - rearHeightM - riseM()) / (rearAlongM - spacingM - eye.alongM()));
    }

    /** Offset of the middle panel above the outer two as the eye sees it, minutes of arc: positive above the slope. */
    public double splitMin(Eye eye) {
        return frontElevationMin(eye) - rearElevationMin(eye);
    }

    /** Meaning where an eye tells apart a given number of minutes of arc (1' in US pack 3.3). */
    public Meaning meaning(Eye eye, double resolutionMin) {
        double split = splitMin(eye);
        if (Math.abs(split) <= resolutionMin) {
            return Meaning.ON_SLOPE;
        }
        return split > 0 ? Meaning.ABOVE : Meaning.BELOW;
    }
}
