package slopewright.standards;

import java.util.Objects;

/**
 * A choice of a rule set with where it comes from.
 *
 * @param word     what is chosen
 * @param citation where it comes from
 */
public record CitedChoice(RuleChoice word, Citation citation) {

    /** Refuses missing parts. */
    public CitedChoice {
        Objects.requireNonNull(word);
        Objects.requireNonNull(citation);
    }

    /** Returns the key by which a project confirms or overrides it. */
    public String key() {
        return citation.key();
    }

    /** Returns whether it says yes. */
    public boolean isYes() {
        return word == RuleChoice.YES;
    }

    CitedChoice withCitation(Citation other) {
        return new CitedChoice(word, other);
    }

    /** Returns the same, known no better than a given class. */
    public CitedChoice atMost(Provenance weakest) {
        return withCitation(citation.atMost(weakest));
    }
}
