package slopewright.checks.internal.tform;

import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.UnitAt;

/**
 * One leg unit of a T form with the place that it would have on level ground.
 *
 * @param unit   the unit
 * @param number 1 to 3 from the bar
 * @param up     whether it is a fly-up unit
 * @param fromM  the place on level ground of its neighbour towards the bar, or of the bar
 * @param levelM the place on level ground where its cut-off plane would pass the same height over the threshold
 */
record TFormLeg(UnitAt unit, int number, boolean up, double fromM, double levelM) {

    /** Returns how far it stands from its neighbour, away from the bar, on level ground; metres. */
    double spacingM() {
        return up ? fromM - levelM : levelM - fromM;
    }

    /** Returns the published distance from the bar. */
    double nominalM(AidFacts facts) {
        return facts.length("leg-first-offset").value() + (number - 1) * facts.length("leg-spacing").value();
    }

    /** Returns the offset of its cut-off from the slope that the rule set gives. */
    double offsetDeg(AidFacts facts) {
        return up ? -(number - 1) * facts.angle("fly-up-step").value() : (number - 1) * facts.angle("fly-down-step").value();
    }
}
