package slopewright.witness;

/**
 * One vertical sector of a light, open below and closed above (a light is white only above its setting, red at it).
 *
 * @param fromDeg lower edge, degrees of elevation
 * @param toDeg upper edge, degrees of elevation
 * @param colour colour shown
 * @param state manner shown
 */
public record Sector(double fromDeg, double toDeg, Colour colour, State state) {

    /** Whether an elevation in degrees lies in the sector. */
    public boolean holds(double elevationDeg) {
        return elevationDeg > fromDeg && elevationDeg <= toDeg;
    }
}
