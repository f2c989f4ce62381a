package slopewright.checks;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.standards.Citation;
import slopewright.standards.RuleSet;

/** Which values of rule sets verdicts rest on, and how many on each. */
public final class RestingValues {
    /**
     * One value that verdicts rest on.
     *
     * @param rules     its rule set
     * @param key       its key, or that of a table
     * @param value     the number, or the control total of the table
     * @param unit      its unit; empty for a table
     * @param citation  where it comes from
     * @param restsOnIt how many verdicts rest on it
     */
    public record Resting(RuleSet rules, String key, double value, String unit, Citation citation, int restsOnIt) {
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
        evaluations.forEach(values::add);
        return values.found.values().stream().sorted(Comparator.comparingInt(Resting::restsOnIt).reversed()
                .thenComparing(Resting::key)).toList();
    }

    private void add(ProjectEvaluation evaluation) {
        Set<RuleSet> all = new LinkedHashSet<>(List.of(evaluation.rules()));
        evaluation.aids().stream().map(AidEvaluation::rules).forEach(all::add);
        List<RuleSet> named = new ArrayList<>();
        Set<String> names = new LinkedHashSet<>();
        all.stream().filter(rules -> names.add(name(rules))).forEach(named::add);
        for (Outcome outcome : Checks.run(evaluation, rule -> true).outcomes()) {
            Set<String> keys = new LinkedHashSet<>();
            for (Citation citation : outcome.citations()) {
                named.stream().filter(rules -> keys.add(name(rules) + " " + citation.key()) && holds(rules, citation))
                        .forEach(rules -> count(rules, citation));
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

    private void count(RuleSet rules, Citation citation) {
        String unit = rules.unit(citation.key()).orElse("");
        rules.confirmable(citation.key()).ifPresent(number -> found.merge(new Name(name(rules), citation.key()),
                new Resting(rules, citation.key(), number, unit, citation, 1),
                (was, is) -> new Resting(was.rules(), was.key(), was.value(), was.unit(), was.citation(), was.restsOnIt() + 1)));
    }
}
