package slopewright.evaluation.tolerance;

import slopewright.siting.SitingException;

/**
 * By how much each unit may be wrong, to both sides.
 *
 * @param angleMinutes its angle, minutes of arc, zero or more
 * @param levelM       the level of its lens, metres, zero or more
 * @param placeM       its place along the runway, metres, zero or more
 */
public record Tolerances(double angleMinutes, double levelM, double placeM) {

    /** Refuses numbers that are no tolerance. */
    public Tolerances {
        if (!(angleMinutes >= 0) || !(levelM >= 0) || !(placeM >= 0) || !Double.isFinite(angleMinutes + levelM + placeM)) {
            throw new SitingException("tolerances must be zero or more");
        }
    }

    /**
     * Returns what a careful setting out leaves: 3 minutes of arc, 0.05 m in level, 0.5 m along the runway. Common practice; no document
     * that was read publishes it.
     */
    public static Tolerances usual() {
        return new Tolerances(3, 0.05, 0.5);
    }
}
