package slopewright.checks.internal.data;

import java.util.Optional;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Rule;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.standards.RuleSets;

/** An aid may name a rule set of its own; it must exist. */
public final class OwnRuleSetRule implements Rule {

    @Override
    public String id() {
        return "DATA-08";
    }

    @Override
    public void check(ProjectEvaluation context, OutcomeCollector findings) {
        for (AidEvaluation subject : context.aids()) {
            String key = subject.aid().getRuleSetKey();
            if (key != null) {
                boolean known = RuleSets.find(key).isPresent();
                findings.decide(subject.aid(), known, Optional.empty(), known ? "The aid names rule set " + key + "."
                        : "There is no rule set '" + key + "'; the one of the project was used. Choose one of "
                                + String.join(", ", RuleSets.all().stream().map(one -> one.key() + ":" + one.edition()).toList()) + ".",
                                severity());
            }
        }
    }
}
