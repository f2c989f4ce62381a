package slopewright.checks.internal.family;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Words;
import slopewright.standards.CitedValue;

/** Which families a runway of a code number may have. */
public final class FamilyCodeRule extends AidRule {

    /** Made by the service loader. */
    public FamilyCodeRule() {
        super("FAM-02", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        if (!facts.atRunway()) {
            return;
        }
        CitedValue from = facts.value("code-from");
        CitedValue to = facts.value("code-to");
        int code = facts.code();
        boolean tooLow = code < from.value();
        Measure measure = tooLow ? Measure.atLeast(code, from.value(), "") : Measure.atMost(code, to.value(), "");
        compare(findings, facts.aid(), measure, OutcomeCollector.weakest(List.of(from.citation(), to.citation())),
                facts.familyName() + " is for code numbers " + Words.number(from.value()) + " to " + Words.number(to.value())
                        + "; the runway has code "
                        + code + ".", "Choose a family for this code number.");
    }
}
