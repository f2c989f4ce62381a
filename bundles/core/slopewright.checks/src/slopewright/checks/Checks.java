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
     * @param ruleSet name of the rule set for every aid; empty for the ones that the project and its aids name
     * @return the result
     * @throws IllegalArgumentException where the rule set or an override is unknown
     */
    public static CheckResult run(Project project, Optional<String> ruleSet) {
        return run(project, ruleSet, rule -> true);
    }

    /**
     * Runs some rules. Where no rule set is named, an aid that names one of its own is checked under that one.
     *
     * @param project the project, not changed
     * @param ruleSet name of the rule set; empty for those that project and aids name
     * @param wanted  which rules
     * @return the result
     * @throws IllegalArgumentException where the rule set or an override is unknown
     */
    public static CheckResult run(Project project, Optional<String> ruleSet, Predicate<Rule> wanted) {
        RuleSet rules = ProjectRules.of(project, ruleSet);
        return run(new CheckContext(project, rules, aid -> ProjectRules.of(project, aid, ruleSet)), wanted);
    }

    /**
     * Runs some rules under one rule set.
     *
     * @param project the project, not changed
     * @param rules   the rule set, with the overrides and confirmations of the project
     * @param wanted  which rules
     * @return the result
     */
    public static CheckResult run(Project project, RuleSet rules, Predicate<Rule> wanted) {
        return run(new CheckContext(project, rules), wanted);
    }

    private static CheckResult run(CheckContext context, Predicate<Rule> wanted) {
        List<Outcome> outcomes = new ArrayList<>();
        for (Rule rule : RuleCatalogue.all()) {
            if (wanted.test(rule)) {
                Findings findings = new Findings(rule);
                rule.check(context, findings);
                outcomes.addAll(findings.outcomes());
            }
        }
        return new CheckResult(context.rules(), outcomes);
    }
}
