package slopewright.checks.internal;

import java.util.Optional;

import slopewright.checks.AidSubject;
import slopewright.checks.CheckContext;
import slopewright.checks.Findings;
import slopewright.checks.Rule;
import slopewright.standards.RuleSets;

/** An aid may name a rule set of its own; it must exist. */
public final class OwnRuleSetRule implements Rule {

    @Override
    public String id() {
        return "DATA-08";
    }

    @Override
    public String title() {
        return "Rule set of the aid exists";
    }

    @Override
    public String description() {
        return "The rule set that an approach aid names for itself is one of the known ones.";
    }

    @Override
    public void check(CheckContext context, Findings findings) {
        for (AidSubject subject : context.aids()) {
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
