package slopewright.checks.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

import slopewright.checks.Outcome;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Rule;
import slopewright.checks.RuleCatalogue;
import slopewright.evaluation.AidEvaluation;
import slopewright.model.Stage;

/** What the rules of design say of one aid by itself, as it stands or as a copy of it proposes. */
public final class DesignOutcomes {

    private DesignOutcomes() {
    }

    /**
     * Asks the rules of design that have something to say about an aid.
     *
     * @param aid    the evaluation of the aid
     * @param wanted which of them
     * @return the outcomes in the order of the rules
     */
    public static List<Outcome> of(AidEvaluation aid, Predicate<Rule> wanted) {
        List<Outcome> outcomes = new ArrayList<>();
        for (Rule rule : RuleCatalogue.all()) {
            if (rule instanceof AidRule one && rule.stage() == Stage.DESIGN && wanted.test(rule) && one.asksAbout(aid)) {
                OutcomeCollector collector = new OutcomeCollector(rule);
                AidRule.guarded(aid.aid(), collector, () -> one.check(new AidFacts(aid), collector));
                outcomes.addAll(collector.outcomes());
            }
        }
        return outcomes;
    }
}
