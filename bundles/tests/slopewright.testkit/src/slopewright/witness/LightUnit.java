package slopewright.witness;

import java.util.List;

/**
 * A light unit at a place. Frame: along from the threshold (or hover point) in the landing direction, right of it, above it.
 *
 * @param id name, A outermost in a row
 * @param bar bar or group the unit belongs to
 * @param alongM along, metres
 * @param rightM to the right, metres
 * @param heightM height of the lens centre, metres
 * @param settingDeg setting of the light, degrees
 * @param sectors what it shows by elevation
 */
public record LightUnit(String id, String bar, double alongM, double rightM, double heightM, double settingDeg, List<Sector> sectors) {

    /** Copies the sectors. */
    public LightUnit {
        sectors = List.copyOf(sectors);
    }

    /** The same light at another place, metres. */
    public LightUnit at(double newAlongM, double newRightM, double newHeightM) {
        return new LightUnit(id, bar, newAlongM, newRightM, newHeightM, settingDeg, sectors);
    }

    /** The sector shown at an elevation in degrees, or null where nothing is shown. */
    public Sector shown(double elevationDeg) {
        for (Sector sector : sectors) {
            if (sector.holds(elevationDeg)) {
                return sector;
            }
        }
        return null;
    }
}
