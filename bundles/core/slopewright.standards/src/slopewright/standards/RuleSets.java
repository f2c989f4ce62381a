package slopewright.standards;

import java.util.List;
import java.util.Optional;

import slopewright.standards.internal.RuleSetLoader;

/** The rule sets that come with the product. */
public final class RuleSets {

    private static final List<RuleSet> BUNDLED = RuleSetLoader.loadBundled();

    private RuleSets() {
    }

    /**
     * Returns every edition of every rule set; of one key the default edition comes first.
     *
     * @return the rule sets in the order in which they are offered
     */
    public static List<RuleSet> all() {
        return BUNDLED;
    }

    /**
     * Finds a rule set.
     *
     * @param name its key, or key and edition joined by a colon: {@code icao} or {@code icao:5th}
     * @return the rule set, empty where there is none of that name
     */
    public static Optional<RuleSet> find(String name) {
        int colon = name.indexOf(':');
        String key = colon < 0 ? name : name.substring(0, colon);
        String edition = colon < 0 ? "" : name.substring(colon + 1);
        return BUNDLED.stream().filter(rules -> rules.key().equals(key) && (colon < 0 || rules.edition().equals(edition))).findFirst();
    }
}
