package slopewright.siting;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import slopewright.messages.Message;

/**
 * What an eye sees of a whole indicator.
 *
 * @param seen         the units from the runway outward, near bar first
 * @param meanings     what they tell; one entry with the empty name where the indicator has one path, else one for each path by name
 * @param elevationDeg elevation of the eye at the siting's reference point in decimal degrees; NaN where it is abeam or behind
 * @param remarks      what a reader must know, such as a colour that two sectors share
 */
public record Observation(List<SeenUnit> seen, Map<String, Meaning> meanings, double elevationDeg, List<Message> remarks) {

    /** Copies the lists. */
    public Observation {
        seen = List.copyOf(seen);
        meanings = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(meanings));
        remarks = List.copyOf(remarks);
    }

    /** Returns the meaning for the only or the lowest path. */
    public Meaning meaning() {
        return meanings.values().iterator().next();
    }
}
