package slopewright.checks.internal.obstacle;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import slopewright.checks.Outcome;
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
    private final Map<String, Verdict> before;

    RemedyVerdicts(AidEvaluation evaluation) {
        this.evaluation = evaluation;
        before = worst(evaluation.trial(copy -> { }));
    }

    /** Returns what a remedy comes to, and which rules of design are worse off after it. */
    Message of(Remedy remedy) {
        if (!remedy.helps()) {
            return remedy.message();
        }
        Map<String, Verdict> after;
        try {
            after = worst(evaluation.trial(copy -> RemedyChange.carryOut(remedy, copy, evaluation.rules())));
        } catch (SitingException | IllegalArgumentException e) {
            return Message.of("remedy.not-tried", remedy.message());
        }
        List<Argument> broken = worse(after, Verdict.NOT_MET);
        List<Argument> open = worse(after, Verdict.TO_CLEAR_UP);
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
    private static Map<String, Verdict> worst(AidEvaluation aid) {
        Map<String, Verdict> worst = new TreeMap<>();
        for (Outcome outcome : DesignOutcomes.of(aid, rule -> true)) {
            worst.merge(outcome.rule(), outcome.verdict(), (one, other) -> one.compareTo(other) <= 0 ? one : other);
        }
        return worst;
    }
}
