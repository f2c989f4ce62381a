package slopewright.checks.internal;

import java.util.List;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.standards.CitedValue;

/** Which families a runway of a code number may have. */
public final class FamilyCodeRule extends AidRule {

    /** Made by the service loader. */
    public FamilyCodeRule() {
        super("FAM-02", "Family suits the code number",
                "The family is one of those that the rule set allows for the code number of the runway.",
                Severity.FAIL, ALL);
    }

    @Override
    void check(AidFacts facts, Findings findings) {
        if (!facts.atRunway()) {
            return;
        }
        CitedValue from = facts.value("code-from");
        CitedValue to = facts.value("code-to");
        int code = facts.code();
        boolean tooLow = code < from.value();
        Measure measure = tooLow ? Measure.atLeast(code, from.value(), "") : Measure.atMost(code, to.value(), "");
        compare(findings, facts.aid(), measure, Findings.weakest(List.of(from.citation(), to.citation())),
                facts.familyName() + " is for code numbers " + Words.number(from.value()) + " to " + Words.number(to.value())
                        + "; the runway has code "
                        + code + ".", "Choose a family for this code number.");
    }
}
