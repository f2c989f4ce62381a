package slopewright.siting.site;

/**
 * A place on the plane of a plan.
 *
 * @param eastM  metres east of the reference of the plane
 * @param northM metres north of it
 */
public record PlanPoint(double eastM, double northM) {

    /** Returns the distance to another place of the same plane, metres. */
    public double distanceM(PlanPoint other) {
        return Math.hypot(other.eastM - eastM, other.northM - northM);
    }

    /** Returns the place moved by a number of metres. */
    public PlanPoint moved(double byEastM, double byNorthM) {
        return new PlanPoint(eastM + byEastM, northM + byNorthM);
    }
}
