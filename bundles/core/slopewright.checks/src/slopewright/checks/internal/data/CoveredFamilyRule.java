package slopewright.checks.internal.data;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Rule;
import slopewright.checks.Severity;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Words;

/**
 * A rule set says nothing about families that it does not cover. A warning: another rule set may cover it, and until then nothing else was
 * checked, which the sentence says.
 */
public final class CoveredFamilyRule implements Rule {
    @Override
    public String id() {
        return "DATA-07";
    }

    @Override
    public Severity severity() {
        return Severity.WARNING;
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        for (AidEvaluation aid : evaluation.aids()) {
            aid.family().ifPresent(family -> outcomes.about(aid.aid()).met(aid.isCovered())
                    .saying(aid.isCovered() ? "covered" : "not-covered", Words.name(aid.rules().key()), Words.name(aid.rules().edition()),
                            Words.name(family.name()))
                    .advising("choose", Words.names(aid.rules().descriptor().families())).add());
        }
    }
}
