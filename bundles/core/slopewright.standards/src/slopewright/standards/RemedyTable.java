package slopewright.standards;

import java.util.List;
import java.util.Objects;

/**
 * What an edition lists against an existing object above the obstacle surface, besides removing or lowering it.
 *
 * @param kinds    the remedies in the order of the edition
 * @param citation where they are listed
 */
public record RemedyTable(List<RemedyKind> kinds, Citation citation) {

    /** Copies the list. */
    public RemedyTable {
        Objects.requireNonNull(citation);
        kinds = List.copyOf(kinds);
    }
}
