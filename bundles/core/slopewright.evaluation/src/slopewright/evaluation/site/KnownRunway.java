package slopewright.evaluation.site;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.messages.Message;

/**
 * A runway as open data have it: copied and converted, never surveyed. What the data lack is empty, so that a rule asks for it.
 *
 * @param airport  name of the aerodrome
 * @param code     its code
 * @param first    the end that is wanted
 * @param other    the end at the far side; empty where the data have no place of it
 * @param lengthM  length of the runway with what is displaced, metres
 * @param widthM   its width, metres
 * @param surface  its surface in the word of the data; empty where they have none
 * @param isPaved  whether it is paved; empty where the data do not say
 * @param source   the data set, the day of the entry and the file
 * @param licence  the licence of the data
 * @param notes    what does not fit together in the data or was worked out of them
 */
public record KnownRunway(String airport, String code, End first, Optional<End> other, OptionalDouble lengthM, OptionalDouble widthM,
        Optional<String> surface, Optional<Boolean> isPaved, String source, String licence, List<Message> notes) {

    /** Copies the list. */
    public KnownRunway {
        Objects.requireNonNull(source);
        Objects.requireNonNull(licence);
        notes = List.copyOf(notes);
    }

    /**
     * One end of it.
     *
     * @param designator          its designator, two digits with a letter where it has one
     * @param latitudeDeg         latitude of the threshold, decimal degrees north on WGS 84
     * @param longitudeDeg        longitude of the threshold, decimal degrees east on WGS 84
     * @param bearingDeg          true bearing of landing, decimal degrees
     * @param elevationM          elevation of the threshold, metres
     * @param displacedM          by how much the threshold is displaced, metres; empty where the data say nothing of it
     * @param extremityElevationM elevation of the extremity before a displaced threshold, metres
     */
    public record End(String designator, double latitudeDeg, double longitudeDeg, double bearingDeg, OptionalDouble elevationM,
            OptionalDouble displacedM, OptionalDouble extremityElevationM) {
    }
}
