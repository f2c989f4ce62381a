package slopewright.standards;

import java.util.List;
import java.util.Optional;

import slopewright.standards.internal.RuleSetLoader;

/** The rule sets that come with the product. */
public final class RuleSets {

    private static final RuleSetLoader BUNDLED = RuleSetLoader.bundled();

    private RuleSets() {
    }

    /**
     * Returns every edition of every rule set; of one key the default edition comes first.
     *
     * @return the rule sets in the order in which they are offered
     */
    public static List<RuleSet> all() {
        return BUNDLED.loadAll();
    }

    /** Returns key and edition of every edition, joined by a colon, in the order in which they are offered; reads none of them. */
    public static List<String> names() {
        return BUNDLED.names();
    }

    /**
     * Finds a rule set; of the others only those are read that it inherits from.
     *
     * @param name its key, or key and edition joined by a colon: {@code icao} or {@code icao:5th}
     * @return the rule set, empty where there is none of that name
     */
    public static Optional<RuleSet> find(String name) {
        int colon = name.indexOf(':');
        return colon < 0 ? BUNDLED.findUsual(name) : BUNDLED.find(name.substring(0, colon), name.substring(colon + 1));
    }
}
