package slopewright.standards;

import slopewright.messages.Argument;

/**
 * A document that values come from.
 *
 * @param key     short name, unique
 * @param title   the title as reports print it, with the words "not read" where the text itself was not seen
 * @param edition edition or date
 */
public record Source(String key, Argument title, Argument edition) {
    /** Spelled out: what a record has by itself is written anew at every start. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Source source && key.equals(source.key) && title.equals(source.title) && edition.equals(source.edition);
    }

    @Override
    public int hashCode() {
        int hash = key.hashCode();
        hash = 31 * hash + title.hashCode();
        return 31 * hash + edition.hashCode();
    }
}
