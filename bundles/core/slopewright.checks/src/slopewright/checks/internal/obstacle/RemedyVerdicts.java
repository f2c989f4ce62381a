package slopewright.checks.internal.obstacle;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import slopewright.checks.Outcome;
import slopewright.checks.Result;
import slopewright.checks.Verdict;
import slopewright.checks.internal.DesignOutcomes;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.remedy.Remedy;
import slopewright.evaluation.remedy.RemedyChange;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.SitingException;

/**
 * What a remedy does to the other rules: one that takes the indicator off an electronic glide path, or its surface over ground that nobody
 * surveyed, cures nothing without saying so.
 */
final class RemedyVerdicts {
    private final AidEvaluation evaluation;
    private final String cured;
    private final Map<String, Verdict> before;

    /**
     * Asks the rules before any remedy.
     *
     * @param evaluation the evaluation of an aid as it stands
     * @param cured      id of the rule that a remedy is to cure: where it is not evaluated afterwards, nobody knows whether it is cured
     */
    RemedyVerdicts(AidEvaluation evaluation, String cured) {
        this.evaluation = evaluation;
        this.cured = cured;
        AidEvaluation asItStands = evaluation.trial(copy -> {
            // the same, asked as a proposal is asked
        });
        before = worst(DesignOutcomes.of(asItStands, rule -> true));
    }

    /** Returns what a remedy comes to, and which rules of design are worse off after it. */
    Message of(Remedy remedy) {
        if (!remedy.helps()) {
            return remedy.message();
        }
        List<Outcome> outcomes;
        try {
            outcomes = DesignOutcomes.of(evaluation.trial(copy -> RemedyChange.carryOut(remedy, copy, evaluation.rules())), rule -> true);
        } catch (SitingException | IllegalArgumentException e) {
            return Message.of("remedy.not-tried", remedy.message());
        }
        Map<String, Verdict> after = worst(outcomes);
        List<Argument> broken = worse(after, Verdict.NOT_MET);
        List<Argument> open = worse(after, Verdict.TO_CLEAR_UP);
        if (outcomes.stream().anyMatch(outcome -> outcome.rule().equals(cured) && outcome.result() == Result.NOT_EVALUATED)) {
            open.add(Words.name(cured));
        }
        if (broken.isEmpty()) {
            return open.isEmpty() ? remedy.message() : Message.of("remedy.then-open", remedy.message(), Words.list(open));
        }
        return open.isEmpty() ? Message.of("remedy.then-broken", remedy.message(), Words.list(broken))
                : Message.of("remedy.then-broken-and-open", remedy.message(), Words.list(broken), Words.list(open));
    }

    private List<Argument> worse(Map<String, Verdict> after, Verdict verdict) {
        List<Argument> rules = new ArrayList<>();
        after.forEach((rule, now) -> {
            if (now == verdict && now.compareTo(before.getOrDefault(rule, Verdict.NOT_APPLICABLE)) < 0) {
                rules.add(Words.name(rule));
            }
        });
        return rules;
    }

    /** Returns the worst verdict of each rule. */
    private static Map<String, Verdict> worst(List<Outcome> outcomes) {
        Map<String, Verdict> worst = new TreeMap<>();
        outcomes.forEach(outcome -> worst.merge(outcome.rule(), outcome.verdict(),
                (one, other) -> one.compareTo(other) <= 0 ? one : other));
        return worst;
    }
}
