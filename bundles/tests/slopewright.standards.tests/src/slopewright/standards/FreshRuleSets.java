package slopewright.standards;

import java.util.List;
import java.util.Optional;

import slopewright.standards.internal.RuleSetLoader;

/** Reads the shipped rule sets anew at every call, so that what is looked at is what the readers make of the files now. */
public final class FreshRuleSets {

    private FreshRuleSets() {
    }

    /** Returns every edition of every rule set. */
    public static List<RuleSet> all() {
        return RuleSetLoader.bundled().loadAll();
    }

    /** Finds an edition, or the default edition of a key. */
    public static Optional<RuleSet> find(String name) {
        return all().stream().filter(rules -> name.equals(rules.key()) || name.equals(rules.key() + ":" + rules.edition())).findFirst();
    }
}
