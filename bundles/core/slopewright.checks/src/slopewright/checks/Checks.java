package slopewright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

import slopewright.model.Project;
import slopewright.standards.RuleSet;

/** Runs the rules. */
public final class Checks {

    private Checks() {
    }

    /**
     * Runs every rule.
     *
     * @param project the project, not changed
     * @param ruleSet name of the rule set; empty for the one that the project names
     * @return the result
     * @throws IllegalArgumentException where the rule set or an override is unknown
     */
    public static CheckResult run(Project project, Optional<String> ruleSet) {
        return run(project, ProjectRules.of(project, ruleSet), rule -> true);
    }

    /**
     * Runs some rules.
     *
     * @param project the project, not changed
     * @param rules   the rule set, with the overrides and confirmations of the project
     * @param wanted  which rules
     * @return the result
     */
    public static CheckResult run(Project project, RuleSet rules, Predicate<Rule> wanted) {
        CheckContext context = new CheckContext(project, rules);
        List<Outcome> outcomes = new ArrayList<>();
        for (Rule rule : RuleCatalogue.all()) {
            if (wanted.test(rule)) {
                Findings findings = new Findings(rule);
                rule.check(context, findings);
                outcomes.addAll(findings.outcomes());
            }
        }
        return new CheckResult(rules, outcomes);
    }
}
