package slopewright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import slopewright.checks.internal.AidRule;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.EvaluationCache;
import slopewright.evaluation.OpenData;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.Stage;

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
        return run(ProjectEvaluation.of(project, ruleSet), wanted);
    }

    /**
     * Runs every rule again after a change, with what the last check left.
     *
     * @param project  the project, not changed
     * @param cache    what the last check of this project left; what has changed since then was forgotten
     * @param progress hears how many of how many rules are done before each; where it says no, the check ends
     * @return the result, empty where it was ended
     * @throws IllegalArgumentException where the rule set or an override is unknown
     */
    public static Optional<CheckResult> run(Project project, EvaluationCache cache, Progress progress) {
        ProjectEvaluation evaluation = ProjectEvaluation.of(project, Optional.empty(), cache);
        int[] done = {0};
        int all = RuleCatalogue.all().size();
        boolean[] ended = {false};
        CheckResult result = run(evaluation, rule -> {
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

    /** Runs some rules over a project that was evaluated, at its own stage. */
    public static CheckResult run(ProjectEvaluation evaluation, Predicate<Rule> wanted) {
        return run(evaluation, evaluation.project().getStage(), wanted);
    }

    /**
     * Runs some rules over a project that was evaluated, as if it had come to a stage.
     *
     * @param evaluation the evaluation
     * @param reached    the stage; rules of a later one say nothing yet
     * @param wanted     which rules
     * @return the result
     */
    public static CheckResult run(ProjectEvaluation evaluation, Stage reached, Predicate<Rule> wanted) {
        return run(evaluation, reached, wanted, aid -> true);
    }

    /** The same; rules about indicators go through some of these alone. */
    static CheckResult run(ProjectEvaluation evaluation, Stage reached, Predicate<Rule> wanted, Predicate<AidEvaluation> about) {
        List<Outcome> outcomes = new ArrayList<>();
        Predicate<Outcome> onOpenData = onOpenData(evaluation);
        for (Rule rule : RuleCatalogue.all()) {
            if (wanted.test(rule)) {
                OutcomeCollector collector = new OutcomeCollector(rule);
                if (rule instanceof AidRule aids) {
                    aids.check(evaluation, about, collector);
                } else {
                    rule.check(evaluation, collector);
                }
                boolean later = rule.stage().compareTo(reached) > 0;
                collector.outcomes().forEach(outcome -> outcomes.add(later ? outcome.before(rule.stage(), reached)
                        : !rule.isAboutData() && onOpenData.test(outcome) ? outcome.onOpenData() : outcome));
            }
        }
        return new CheckResult(evaluation.rules(), reached, outcomes);
    }

    /**
     * Says of what is met whether it rests on figures of a runway that nobody surveyed or confirmed. Rules about data say that entries are
     * there and agree with each other, which holds of open data as well; that nobody confirmed these is an outcome of its own.
     */
    private static Predicate<Outcome> onOpenData(ProjectEvaluation evaluation) {
        if (!OpenData.isOpen(evaluation.project())) {
            return outcome -> false;
        }
        Set<String> resting = Stream.concat(evaluation.siteElements().stream(), evaluation.aidElements().stream())
                .filter(OpenData::restsOn).map(Identified::getId).collect(Collectors.toSet());
        return outcome -> outcome.result() == Result.PASS && resting.contains(outcome.elementId());
    }
}
