package slopewright.evaluation.site;

import java.util.List;

/**
 * A helipad beside the first one of a new site.
 *
 * @param name        what it is called
 * @param eastM       its middle from that of the first one, metres to the east
 * @param northM      metres to the north
 * @param elevationM  its elevation, metres
 * @param bearingsDeg its landing directions, decimal degrees from true north
 */
public record FurtherPad(String name, double eastM, double northM, double elevationM, List<Double> bearingsDeg) {

    /** Copies the list. */
    public FurtherPad {
        bearingsDeg = List.copyOf(bearingsDeg);
    }
}
