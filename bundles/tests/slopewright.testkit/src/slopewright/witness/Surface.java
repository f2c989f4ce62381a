package slopewright.witness;

/**
 * A sloping obstacle surface. It starts at an inner edge square to its axis and rises outward into the approach.
 *
 * @param startAlongM inner edge at the axis, along the landing direction from the threshold before any turn, metres
 * @param startHeightM height of the inner edge above the threshold, metres
 * @param innerEdgeM length of the inner edge, metres
 * @param divergencePercent divergence each side, per cent; NaN where the splay is an angle
 * @param divergenceDeg divergence each side, degrees; NaN where the splay is a percentage
 * @param slopeDeg slope, degrees; NaN where no text prints one
 * @param lengthM length, metres; infinite where none is printed
 * @param pivotAlongM place on the centre line about which the surface turns with the axis, metres
 * @param axisTurnDeg turn, positive to the right as the landing pilot sees it, degrees
 */
public record Surface(double startAlongM, double startHeightM, double innerEdgeM, double divergencePercent, double divergenceDeg,
        double slopeDeg, double lengthM, double pivotAlongM, double axisTurnDeg) {

    /** Whether the surface has a slope to be judged by. */
    public boolean evaluable() {
        return !Double.isNaN(slopeDeg);
    }

    /** Distance from the inner edge outward along the axis of a point, metres. */
    public double outwardM(double alongM, double rightM) {
        double turn = Math.toRadians(axisTurnDeg);
        double fromPivot = -(alongM - pivotAlongM) * Math.cos(turn) + rightM * Math.sin(turn);
        return fromPivot - (pivotAlongM - startAlongM);
    }

    /** Distance from the axis of a point, to the right positive, metres. */
    public double asideM(double alongM, double rightM) {
        double turn = Math.toRadians(axisTurnDeg);
        return (alongM - pivotAlongM) * Math.sin(turn) + rightM * Math.cos(turn);
    }

    /** Half width at a distance outward from the inner edge, metres. */
    public double halfWidthM(double outwardM) {
        double splay = Double.isNaN(divergenceDeg) ? divergencePercent / 100 : Angles.tanDeg(divergenceDeg);
        return innerEdgeM / 2 + outwardM * splay;
    }

    /** Whether a point lies under or over the plan of the surface, edges included. */
    public boolean contains(double alongM, double rightM) {
        double outward = outwardM(alongM, rightM);
        return outward >= -1e-9 && outward <= lengthM + 1e-9 && Math.abs(asideM(alongM, rightM)) <= halfWidthM(outward) + 1e-9;
    }

    /** Height of the surface at a point, above the threshold, metres. */
    public double heightM(double alongM, double rightM) {
        return startHeightM + outwardM(alongM, rightM) * Angles.tanDeg(slopeDeg);
    }
}
