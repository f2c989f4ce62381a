package slopewright.checks;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;

/** All rules, found as services of this bundle, in the order of their ids. */
public final class RuleCatalogue {

    private static final List<Rule> ALL = ServiceLoader.load(Rule.class, RuleCatalogue.class.getClassLoader()).stream()
            .map(ServiceLoader.Provider::get).sorted(Comparator.comparing(Rule::id)).toList();

    private RuleCatalogue() {
    }

    /** Returns all rules. */
    public static List<Rule> all() {
        return ALL;
    }

    /** Returns the rule with an id, empty where there is none. */
    public static Optional<Rule> find(String id) {
        return ALL.stream().filter(rule -> rule.id().equals(id)).findFirst();
    }
}
