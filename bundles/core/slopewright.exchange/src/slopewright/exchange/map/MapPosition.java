package slopewright.exchange.map;

/**
 * A position on a map.
 *
 * @param latitudeDeg  decimal degrees on WGS 84, north positive
 * @param longitudeDeg decimal degrees on WGS 84, east positive
 * @param elevationM   metres in the vertical datum of the aerodrome; NaN where it is not known
 */
public record MapPosition(double latitudeDeg, double longitudeDeg, double elevationM) {

    /** Returns whether the elevation is known. */
    public boolean isHigh() {
        return !Double.isNaN(elevationM);
    }
}
