package slopewright.standards;

import java.util.Objects;

import slopewright.messages.Argument;
import slopewright.messages.Message;

/**
 * Where a value comes from.
 *
 * @param key          name of the value or table, by which a project confirms or overrides it
 * @param source       the document
 * @param clause       clause, table or figure in it
 * @param provenance   how well it is known
 * @param note         a remark to print beside it; may be empty
 * @param confirmation who confirmed it against what; empty where nobody did
 */
public record Citation(String key, Source source, Argument clause, Provenance provenance, Argument note, String confirmation) {

    /** Refuses missing parts. */
    public Citation {
        Objects.requireNonNull(key);
        Objects.requireNonNull(source);
        Objects.requireNonNull(clause);
        Objects.requireNonNull(provenance);
        Objects.requireNonNull(note);
        Objects.requireNonNull(confirmation);
    }

    /** Returns whether a verdict that rests on this still needs a person's confirmation. */
    public boolean toConfirm() {
        return provenance.needsConfirmation() && confirmation.isEmpty();
    }

    /** Returns the same citation, confirmed. */
    public Citation confirmed(String by) {
        return new Citation(key, source, clause, provenance, note, by);
    }

    /** Returns the same citation, known no better than a given class. */
    public Citation atMost(Provenance weakest) {
        return provenance.compareTo(weakest) >= 0 ? this : new Citation(key, source, clause, weakest, note, confirmation);
    }

    /** Returns the document and clause in one line, as reports and findings print them. */
    public Argument text() {
        return clause.isBlank() ? source.title() : Message.of("cited.clause-of", source.title(), clause);
    }

    /** Spelled out: what a record has by itself is written anew at every start. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Citation citation && key.equals(citation.key) && source.equals(citation.source)
                && clause.equals(citation.clause) && provenance == citation.provenance && note.equals(citation.note)
                && confirmation.equals(citation.confirmation);
    }

    @Override
    public int hashCode() {
        int hash = key.hashCode();
        hash = 31 * hash + source.hashCode();
        hash = 31 * hash + clause.hashCode();
        hash = 31 * hash + provenance.hashCode();
        hash = 31 * hash + note.hashCode();
        return 31 * hash + confirmation.hashCode();
    }
}
