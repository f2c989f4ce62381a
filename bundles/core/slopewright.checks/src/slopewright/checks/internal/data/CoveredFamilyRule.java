package slopewright.checks.internal.data;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Words;
import slopewright.siting.Families;

/**
 * A rule set says nothing about families that it does not cover. A warning: another rule set may cover it, and until then nothing else was
 * checked, which the sentence says.
 */
public final class CoveredFamilyRule extends ProjectRule {
    /** Made by the service loader. */
    public CoveredFamilyRule() {
        super("DATA-07", Severity.WARNING);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        for (AidEvaluation aid : evaluation.aids()) {
            aid.family().ifPresent(family -> outcomes.about(aid.aid()).met(aid.isCovered())
                    .saying(aid.isCovered() ? "covered" : "not-covered", aid.rules().descriptor().name(), Words.name(aid.rules().edition()),
                            Families.name(family))
                    .advising("choose", Words.list(aid.rules().descriptor().families().stream().map(Families::nameOf).toList())).add());
        }
    }
}
