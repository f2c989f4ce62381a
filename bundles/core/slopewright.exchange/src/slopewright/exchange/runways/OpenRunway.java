package slopewright.exchange.runways;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A runway of open data, in the units of the data.
 *
 * @param id       its number in the data
 * @param lengthFt length, feet
 * @param widthFt  width, feet
 * @param surface  the word for its surface, in small letters; empty where the data do not know it
 * @param isClosed whether the data say that it is closed
 * @param ends     its ends, at most two of which the data have something to say
 */
public record OpenRunway(String id, OptionalDouble lengthFt, OptionalDouble widthFt, String surface, boolean isClosed,
        List<OpenEnd> ends) {

    /** Copies the list. */
    public OpenRunway {
        ends = List.copyOf(ends);
    }

    /**
     * An end of it.
     *
     * @param ident        its designator as the data have it
     * @param headingDeg   heading that the data call true, decimal degrees
     * @param latitudeDeg  latitude of the end of the pavement, decimal degrees north on WGS 84
     * @param longitudeDeg longitude of the same place, decimal degrees east
     * @param displacedFt  by how much the threshold is displaced, feet
     * @param elevationFt  elevation of the same place, feet
     */
    public record OpenEnd(String ident, OptionalDouble headingDeg, OptionalDouble latitudeDeg, OptionalDouble longitudeDeg,
            OptionalDouble displacedFt, OptionalDouble elevationFt) {

        /** Returns whether the data have a place of it. */
        public boolean hasPlace() {
            return latitudeDeg.isPresent() && longitudeDeg.isPresent()
                    && Math.abs(latitudeDeg.getAsDouble()) <= 90 && Math.abs(longitudeDeg.getAsDouble()) <= 180
                    && (latitudeDeg.getAsDouble() != 0 || longitudeDeg.getAsDouble() != 0);
        }
    }
}
