package slopewright.checks;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Stage;
import slopewright.standards.RuleSet;

/**
 * What all rules say about a project.
 *
 * @param rules    the rule set that was used
 * @param stage    the stage of the project, to which rules of a later one do not apply yet
 * @param outcomes the outcomes in the order of the catalogue
 */
public record CheckResult(RuleSet rules, Stage stage, List<Outcome> outcomes) {

    /** Copies the list. */
    public CheckResult {
        outcomes = List.copyOf(outcomes);
    }

    /** Returns how many outcomes there are of each verdict. */
    public Map<Verdict, Integer> counts() {
        Map<Verdict, Integer> counts = new EnumMap<>(Verdict.class);
        for (Verdict verdict : Verdict.values()) {
            counts.put(verdict, (int) outcomes.stream().filter(outcome -> outcome.verdict() == verdict).count());
        }
        return counts;
    }

    /**
     * Returns how many outcomes there are of each verdict, of the rules of design or of those about data alone.
     *
     * @param aboutData whether of those about entries and records
     * @return a number for every verdict; both counts together make {@link #counts()}
     */
    public Map<Verdict, Integer> counts(boolean aboutData) {
        return new CheckResult(rules, stage, outcomes.stream().filter(outcome -> outcome.isAboutData() == aboutData).toList()).counts();
    }

    /** Returns how many of the outcomes that do not apply are those of rules of a later stage. */
    public int notAtThisStage() {
        return (int) outcomes.stream().filter(outcome -> outcome.result() == Result.NOT_AT_THIS_STAGE).count();
    }

    /** Returns what stands beside a signature under a review: how much was not met and to clear up when it was given. */
    public Message signedCounts() {
        Map<Verdict, Integer> counts = counts();
        return Message.of("review.signed-counts", Words.count(counts.get(Verdict.NOT_MET)), Words.count(counts.get(Verdict.TO_CLEAR_UP)));
    }

    /** Returns whether any rule passed or failed; where none did, nothing was evaluated and nothing may be concluded. */
    public boolean anythingEvaluated() {
        return outcomes.stream().anyMatch(Outcome::isEvaluated);
    }

    /** Returns whether a rule of severity fail is not met. */
    public boolean isBroken() {
        return outcomes.stream().anyMatch(outcome -> outcome.verdict() == Verdict.NOT_MET && outcome.severity() == Severity.FAIL);
    }

    /** Returns the weight of the weightiest finding, empty where there is none. */
    public Optional<Severity> worst() {
        return outcomes.stream().flatMap(outcome -> outcome.weight().stream()).max(Severity::compareTo);
    }

    /** Returns the outcomes that are findings, weightiest first, else in the order of the catalogue. */
    public List<Outcome> findings() {
        return outcomes.stream().filter(outcome -> outcome.weight().isPresent())
                .sorted((a, b) -> b.weight().orElseThrow().compareTo(a.weight().orElseThrow())).toList();
    }
}
