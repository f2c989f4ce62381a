package slopewright.witness;

/**
 * Sector edges of a tri-colour or pulsating unit, entered for the unit in hand since no text prints them.
 *
 * @param lowestDeg pulsating red to steady red (pulsating unit only), degrees
 * @param lowerDeg red to the on-path sector, degrees
 * @param upperDeg on-path sector to above, degrees
 */
public record Edges(double lowestDeg, double lowerDeg, double upperDeg) {
}
