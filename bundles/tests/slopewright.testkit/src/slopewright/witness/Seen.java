package slopewright.witness;

/**
 * One light as seen from an eye.
 *
 * @param id unit
 * @param bar its bar
 * @param colour colour
 * @param state manner
 * @param elevationDeg elevation of the eye at the unit in the plane along the axis, degrees
 */
public record Seen(String id, String bar, Colour colour, State state, double elevationDeg) {
}
