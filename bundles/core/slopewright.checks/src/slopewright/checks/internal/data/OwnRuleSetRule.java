package slopewright.checks.internal.data;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.ProjectRules;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.standards.RuleSets;

/** An aid may name a rule set of its own; it must exist. Severity fail: the aid is judged under rules that were not meant. */
public final class OwnRuleSetRule extends ProjectRule {
    /** Made by the service loader. */
    public OwnRuleSetRule() {
        super("DATA-08", Severity.FAIL);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        for (AidEvaluation aid : evaluation.aids()) {
            String key = aid.aid().getRuleSetKey();
            if (key == null || key.isBlank()) {
                outcomes.notApplicable(aid.aid(), Message.of("DATA-08.none", aid.rules().descriptor().name(),
                        Words.name(aid.rules().edition())));
                continue;
            }
            boolean known = ProjectRules.find(evaluation.project(), ProjectRules.stored(key)).isPresent();
            outcomes.about(aid.aid()).met(known).saying(known ? "known" : "unknown", Words.name(key))
                    .advising("choose", Words.names(RuleSets.names()))
                    .add();
        }
    }
}
