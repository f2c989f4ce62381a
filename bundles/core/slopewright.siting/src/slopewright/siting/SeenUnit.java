package slopewright.siting;

import java.util.OptionalDouble;

/**
 * What an eye sees of one unit.
 *
 * @param unit         the unit
 * @param light        what it shows to the eye; dark for a panel
 * @param inTransition whether the eye is in the change from one light to another
 * @param elevationDeg elevation of the eye in the plane of the unit's axis, decimal degrees; NaN where it is abeam or behind
 * @param offsetMin    for a panel, by how much it appears above the line of the outer panels, minutes of arc; empty for a light
 */
public record SeenUnit(UnitPlan unit, Light light, boolean inTransition, double elevationDeg, OptionalDouble offsetMin) {
}
