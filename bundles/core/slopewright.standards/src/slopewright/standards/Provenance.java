package slopewright.standards;

import java.util.Arrays;
import java.util.stream.Stream;

/** How well a value is known, from best to worst. */
public enum Provenance {

    /** Read in the primary text, or quoted from it word for word. */
    PUBLISHED("published", false),
    /** Computed from published values only. */
    DERIVED("derived", false),
    /** Entered in the project by a named person for a stated reason. */
    OVERRIDE("override", false),
    /** Taken from an organisation's own rule set, which names document, clause, person and date. */
    ORGANISATION("organisation", false),
    /** Read in a text that restates the primary one. */
    SECONDARY("secondary", true),
    /** In use in the trade, without a source. */
    COMMON_PRACTICE("common-practice", true),
    /** Remembered, not seen; to be verified against the issued document. */
    FROM_MEMORY("from-memory", true),
    /** Held against the document by a named person who says that it is not to be used. */
    REJECTED("rejected", true);

    private final String key;
    private final boolean toConfirm;

    Provenance(String key, boolean toConfirm) {
        this.key = key;
        this.toConfirm = toConfirm;
    }

    /** Returns the word used in files and output. */
    public String key() {
        return key;
    }

    /** Returns whether a verdict that such a value decides needs a person's confirmation. */
    public boolean needsConfirmation() {
        return toConfirm;
    }

    /**
     * Returns the class of a value computed from others: the weakest of the inputs, and {@link #DERIVED} where all are published.
     *
     * @param inputs at least one
     * @return the class of the result
     */
    public static Provenance derivedFrom(Stream<Provenance> inputs) {
        Provenance weakest = inputs.max(Provenance::compareTo).orElseThrow();
        return weakest == PUBLISHED ? DERIVED : weakest;
    }

    /**
     * Returns the class with a given word.
     *
     * @param key the word, as {@link #key()} gives it
     * @return the class
     * @throws IllegalArgumentException where there is none; the message names the word
     */
    public static Provenance of(String key) {
        return Arrays.stream(values()).filter(provenance -> provenance.key.equals(key)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("'" + key + "' is no provenance"));
    }
}
