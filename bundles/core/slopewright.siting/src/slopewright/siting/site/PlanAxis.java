package slopewright.siting.site;

import slopewright.geometry.FramePoint;

/**
 * The frame of a runway end or helipad as it lies on the plane of a plan: turned and shifted, not stretched.
 *
 * @param origin     the threshold or the hover point
 * @param bearingDeg the landing direction on the plane, decimal degrees clockwise from its north; it differs from the true bearing by
 *                   the convergence of the meridians
 */
public record PlanAxis(PlanPoint origin, double bearingDeg) {

    /**
     * Brings a point of the frame onto the plane.
     *
     * @param alongM metres in the landing direction
     * @param rightM metres to the right of it
     */
    public PlanPoint toPlane(double alongM, double rightM) {
        double angle = Math.toRadians(bearingDeg);
        return origin.moved(alongM * Math.sin(angle) + rightM * Math.cos(angle), alongM * Math.cos(angle) - rightM * Math.sin(angle));
    }

    /** Brings a point of the frame onto the plane; its height is left out. */
    public PlanPoint toPlane(FramePoint point) {
        return toPlane(point.alongM(), point.rightM());
    }

    /**
     * Brings a place of the plane into the frame.
     *
     * @param place   the place
     * @param heightM the height that the point shall have, metres
     */
    public FramePoint toFrame(PlanPoint place, double heightM) {
        return new FramePoint(alongM(place.eastM() - origin.eastM(), place.northM() - origin.northM()),
                rightM(place.eastM() - origin.eastM(), place.northM() - origin.northM()), heightM);
    }

    /** Returns how far a shift on the plane goes in the landing direction, metres. */
    public double alongM(double byEastM, double byNorthM) {
        double angle = Math.toRadians(bearingDeg);
        return byEastM * Math.sin(angle) + byNorthM * Math.cos(angle);
    }

    /** Returns how far a shift on the plane goes to the right of the landing direction, metres. */
    public double rightM(double byEastM, double byNorthM) {
        double angle = Math.toRadians(bearingDeg);
        return byEastM * Math.cos(angle) - byNorthM * Math.sin(angle);
    }
}
