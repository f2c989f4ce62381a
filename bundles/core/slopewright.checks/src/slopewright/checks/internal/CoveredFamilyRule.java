package slopewright.checks.internal;

import java.util.Optional;

import slopewright.checks.AidSubject;
import slopewright.checks.CheckContext;
import slopewright.checks.Findings;
import slopewright.checks.Rule;
import slopewright.checks.Severity;

/** A rule set says nothing about families that it does not cover. */
public final class CoveredFamilyRule implements Rule {

    @Override
    public String id() {
        return "DATA-07";
    }

    @Override
    public String title() {
        return "Rule set covers the family";
    }

    @Override
    public String description() {
        return "The rule set that applies to an approach aid has rules for its family.";
    }

    @Override
    public Severity severity() {
        return Severity.WARNING;
    }

    @Override
    public void check(CheckContext context, Findings findings) {
        for (AidSubject subject : context.aids()) {
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
