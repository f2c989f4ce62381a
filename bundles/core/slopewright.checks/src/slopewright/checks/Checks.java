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

    /**
     * Runs every rule again after a change, with what the last check left.
     *
     * @param project  the project, not changed
     * @param memory   what the last check of this project left; what has changed since then was forgotten
     * @param progress hears how many of how many rules are done before each; where it says no, the check ends
     * @return the result, empty where it was ended
     * @throws IllegalArgumentException where the rule set or an override is unknown
     */
    public static Optional<CheckResult> run(Project project, CheckMemory memory, Progress progress) {
        RuleSet rules = ProjectRules.of(project, Optional.empty());
        CheckContext context = new CheckContext(project, rules, aid -> ProjectRules.of(project, aid, Optional.empty()), memory);
        int[] done = {0};
        int all = RuleCatalogue.all().size();
        boolean[] ended = {false};
        CheckResult result = run(context, rule -> {
            ended[0] = ended[0] || !progress.isWanted(done[0]++, all);
            return !ended[0];
        });
        return ended[0] ? Optional.empty() : Optional.of(result);
    }

    /** Hears how far a check has come, and may end it. */
    @FunctionalInterface
    public interface Progress {

        /**
         * Called before each rule.
         *
         * @param done how many rules have been run
         * @param all  how many there are
         * @return whether the check shall go on
         */
        boolean isWanted(int done, int all);
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
