package slopewright.exchange.map;

import java.util.List;
import java.util.Objects;

import slopewright.evaluation.MadeFrom;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Printable;

/**
 * Features with what a reader must know to use them.
 *
 * @param name     name of the document
 * @param basis    what its numbers count from
 * @param notes    what a reader must know, one sentence each
 * @param made     what they are made from
 * @param features the features, in their order
 * @param words    the language that it speaks
 */
public record MapDocument(String name, MapBasis basis, List<String> notes, MadeFrom made,
        List<MapFeature> features, MessageRenderer words) {

    /** Copies the lists, without what would steer a text. */
    public MapDocument {
        name = Printable.of(name);
        Objects.requireNonNull(basis);
        Objects.requireNonNull(made);
        Objects.requireNonNull(words);
        notes = notes.stream().map(Printable::of).toList();
        features = List.copyOf(features);
    }

    /** Returns the document with what else is known of where it comes from. */
    public MapDocument from(MadeFrom origin) {
        return new MapDocument(name, basis, notes, origin, features, words);
    }
}
