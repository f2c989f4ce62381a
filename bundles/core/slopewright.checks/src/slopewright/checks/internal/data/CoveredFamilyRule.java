package slopewright.checks.internal.data;

import java.util.Optional;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Rule;
import slopewright.checks.Severity;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;

/** A rule set says nothing about families that it does not cover. */
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
    public void check(ProjectEvaluation context, OutcomeCollector findings) {
        for (AidEvaluation subject : context.aids()) {
            if (subject.family().isEmpty()) {
                continue;
            }
            String rules = subject.rules().key() + " (" + subject.rules().edition() + ")";
            String name = subject.family().orElseThrow().name();
            findings.decide(subject.aid(), subject.isCovered(), Optional.empty(), subject.isCovered() ? "Rule set " + rules + " covers "
                    + name + "."
                    : "Rule set " + rules + " does not cover " + name
                    + ": nothing else was checked. Name a rule set for this aid that does; it covers "
                            + String.join(", ", subject.rules().descriptor().families()) + ".", severity());
        }
    }
}
