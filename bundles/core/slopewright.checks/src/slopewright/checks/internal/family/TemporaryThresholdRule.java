package slopewright.checks.internal.family;

import java.util.Optional;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Words;
import slopewright.standards.CitedValue;

/** What may mark the slope at a threshold that is displaced for a time. */
public final class TemporaryThresholdRule extends AidRule {

    /** Made by the service loader. */
    public TemporaryThresholdRule() {
        super("FAM-03", Severity.NOTE);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        if (!facts.atRunway()) {
            return;
        }
        Double displaced = facts.end().getDisplacedThresholdM();
        CitedValue row = facts.common("four-unit-row.temporary-threshold-code-to");
        if (displaced == null || displaced == 0) {
            findings.notApplicable(facts.aid(), "The threshold is not displaced.");
            return;
        }
        Optional<CitedValue> highest = facts.find("temporary-threshold-code-to");
        boolean met = highest.isPresent() && facts.code() <= highest.get().value();
        decide(findings, facts.aid(), met, highest.map(CitedValue::citation).orElse(row.citation()),
                "The threshold is displaced by " + Words.m(displaced) + "; " + facts.familyName() + " stands there, code " + facts.code()
                        + ".",
                "If the displacement is temporary, a row of four is recommended, or of two on code 1 and 2 without international"
                + " services.");
    }
}
