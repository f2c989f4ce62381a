package slopewright.checks;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.ProjectRules;
import slopewright.standards.Citation;
import slopewright.standards.RuleSet;

/** Which values of rule sets verdicts rest on, and how many on each. */
public final class RestingValues {
    /**
     * One value that verdicts rest on.
     *
     * @param rules    its rule set, as its document has it: without what a project overrides or confirms
     * @param key      its key, or that of a table
     * @param value    the number, or the control total of the table
     * @param unit     its unit; empty for a table
     * @param citation where it comes from
     * @param outcomes the verdicts that rest on it
     */
    public record Resting(RuleSet rules, String key, double value, String unit, Citation citation, List<Outcome> outcomes) {
        /** Copies the list. */
        public Resting {
            outcomes = List.copyOf(outcomes);
        }

        /** Returns how many verdicts rest on it. */
        public int restsOnIt() {
            return outcomes.size();
        }

        /** Returns key and edition of its rule set, joined by a colon. */
        public String ruleSet() {
            return name(rules);
        }
    }

    private record Name(String ruleSet, String key) {
    }

    private final Map<Name, Resting> found = new LinkedHashMap<>();

    private RestingValues() {
    }

    /**
     * Collects the values of projects.
     *
     * @param evaluations evaluated projects
     * @return the values, those that most rests on first
     */
    public static List<Resting> of(Collection<ProjectEvaluation> evaluations) {
        RestingValues values = new RestingValues();
        evaluations.forEach(evaluation -> values.add(evaluation, Checks.run(evaluation, rule -> true).outcomes()));
        return values.sorted();
    }

    /**
     * Collects the values of one project that was checked.
     *
     * @param evaluation the project
     * @param outcomes   its outcomes
     * @return the values, those that most rests on first
     */
    public static List<Resting> of(ProjectEvaluation evaluation, List<Outcome> outcomes) {
        RestingValues values = new RestingValues();
        values.add(evaluation, outcomes);
        return values.sorted();
    }

    private List<Resting> sorted() {
        return found.values().stream().sorted(Comparator.comparingInt(Resting::restsOnIt).reversed()
                .thenComparing(Resting::key)).toList();
    }

    private void add(ProjectEvaluation evaluation, List<Outcome> outcomes) {
        Set<RuleSet> all = new LinkedHashSet<>(List.of(evaluation.rules()));
        evaluation.aids().stream().map(AidEvaluation::rules).forEach(all::add);
        List<RuleSet> named = new ArrayList<>();
        Set<String> names = new LinkedHashSet<>();
        all.stream().filter(rules -> names.add(name(rules))).forEach(named::add);
        Map<String, RuleSet> printed = new HashMap<>();
        named.forEach(rules -> printed.put(name(rules), ProjectRules.find(evaluation.project(), name(rules)).orElse(rules)));
        for (Outcome outcome : outcomes) {
            Set<String> keys = new LinkedHashSet<>();
            for (Citation citation : outcome.citations()) {
                named.stream().filter(rules -> keys.add(name(rules) + " " + citation.key()) && holds(rules, citation))
                        .forEach(rules -> count(printed.get(name(rules)), citation.key(), outcome));
            }
        }
    }

    private static String name(RuleSet rules) {
        return rules.key() + ":" + rules.edition();
    }

    /** A value that two rule sets share counts for each; a table is told by its source and clause. */
    private static boolean holds(RuleSet rules, Citation citation) {
        return rules.citation(citation.key()).filter(own -> own.source().equals(citation.source())
                && own.clause().equals(citation.clause())).isPresent();
    }

    private void count(RuleSet rules, String key, Outcome outcome) {
        if (rules.confirmable(key).isPresent() && rules.citation(key).isPresent()) {
            found.merge(new Name(name(rules), key), new Resting(rules, key, rules.confirmable(key).getAsDouble(),
                    rules.unit(key).orElse(""), rules.citation(key).get(), List.of(outcome)), (was, is) -> new Resting(was.rules(),
                            was.key(), was.value(), was.unit(), was.citation(), joined(was.outcomes(), outcome)));
        }
    }

    private static List<Outcome> joined(List<Outcome> outcomes, Outcome another) {
        List<Outcome> all = new ArrayList<>(outcomes);
        all.add(another);
        return all;
    }
}
