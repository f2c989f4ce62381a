package slopewright.siting;

/**
 * What bounds the on-slope signal of a pattern from below over the origin of the frame.
 *
 * @param unitId   the unit that bounds it; empty where it is no edge of one unit
 * @param angleDeg its edge less the allowance, decimal degrees
 * @param heightM  the least on-slope eye height on that angle over the origin, on the centre line, metres
 */
public record OnSlopeBound(String unitId, double angleDeg, double heightM) {
}
