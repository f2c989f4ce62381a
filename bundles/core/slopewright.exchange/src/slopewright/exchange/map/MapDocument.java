package slopewright.exchange.map;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

import slopewright.evaluation.MadeFrom;
import slopewright.messages.MessageRenderer;

/**
 * Features with what a reader must know to use them.
 *
 * @param name          name of the document
 * @param verticalDatum name of the datum of all elevations
 * @param geoidOffsetM  height of that datum above the WGS 84 ellipsoid here, metres; empty where it is not known
 * @param notes         what a reader must know, one sentence each
 * @param made          what they are made from
 * @param features      the features, in their order
 * @param words         the language that it speaks
 */
public record MapDocument(String name, String verticalDatum, OptionalDouble geoidOffsetM, List<String> notes, MadeFrom made,
        List<MapFeature> features, MessageRenderer words) {

    /** Copies the lists. */
    public MapDocument {
        Objects.requireNonNull(name);
        Objects.requireNonNull(verticalDatum);
        Objects.requireNonNull(geoidOffsetM);
        Objects.requireNonNull(made);
        Objects.requireNonNull(words);
        notes = List.copyOf(notes);
        features = List.copyOf(features);
    }

    /** Returns the document with what else is known of where it comes from. */
    public MapDocument from(MadeFrom origin) {
        return new MapDocument(name, verticalDatum, geoidOffsetM, notes, origin, features, words);
    }
}
