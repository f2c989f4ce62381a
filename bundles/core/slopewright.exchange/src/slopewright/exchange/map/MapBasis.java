package slopewright.exchange.map;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import slopewright.model.Aerodrome;
import slopewright.siting.site.CoordinateBasis;

/**
 * What the numbers of a map count from. The places of a map are on WGS 84; where they come from says how well they can be so.
 *
 * @param surveyedIn          the reference in which the places were entered
 * @param coordinateEpoch     the epoch for which they hold there, a decimal year
 * @param horizontalAccuracyM how well they are known in plan, metres
 * @param verticalDatum       name of the datum of all elevations
 * @param geoidOffsetM        height of that datum above the WGS 84 ellipsoid here, metres
 */
public record MapBasis(String surveyedIn, Optional<Double> coordinateEpoch, Optional<Double> horizontalAccuracyM, String verticalDatum,
        Optional<Double> geoidOffsetM) {

    /** Refuses what is absent. */
    public MapBasis {
        Objects.requireNonNull(surveyedIn);
        Objects.requireNonNull(coordinateEpoch);
        Objects.requireNonNull(horizontalAccuracyM);
        Objects.requireNonNull(verticalDatum);
        Objects.requireNonNull(geoidOffsetM);
    }

    static MapBasis of(Aerodrome aerodrome, String verticalDatum) {
        CoordinateBasis coordinates = CoordinateBasis.of(aerodrome);
        return new MapBasis(coordinates.reference(), coordinates.epoch(), coordinates.accuracyM(), verticalDatum,
                Optional.ofNullable(aerodrome.getGeoidOffsetM()));
    }

    /** Returns each by its name, null where it is not known. */
    Map<String, Object> facts() {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("surveyedIn", surveyedIn);
        facts.put("coordinateEpoch", coordinateEpoch.orElse(null));
        facts.put("horizontalAccuracyM", horizontalAccuracyM.orElse(null));
        facts.put("verticalDatum", verticalDatum);
        facts.put("geoidOffsetM", geoidOffsetM.orElse(null));
        return facts;
    }
}
