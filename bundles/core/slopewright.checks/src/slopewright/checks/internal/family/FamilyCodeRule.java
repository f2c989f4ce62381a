package slopewright.checks.internal.family;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.messages.Words;
import slopewright.standards.CitedValue;

/** Which families a runway of a code number may have. Severity fail: the text names no other. */
public final class FamilyCodeRule extends AidRule {

    /** Made by the service loader. */
    public FamilyCodeRule() {
        super("FAM-02", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        facts.end();
        CitedValue from = facts.value("code-from");
        CitedValue to = facts.value("code-to");
        int code = facts.code();
        outcomes.about(facts.aid()).measured(Measure.between(code, from.value(), to.value(), "")).resting(from, to)
                .saying("code", facts.familyName(), Words.number(from.value()), Words.number(to.value()), Words.count(code))
                .advising("choose").add();
    }
}
