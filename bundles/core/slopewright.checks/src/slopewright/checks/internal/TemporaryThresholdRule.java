package slopewright.checks.internal;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import slopewright.checks.Findings;
import slopewright.checks.Severity;
import slopewright.standards.CitedValue;

/** What may mark the slope at a threshold that is displaced for a time. */
public final class TemporaryThresholdRule extends AidRule {

    /** Made by the service loader. */
    public TemporaryThresholdRule() {
        super("FAM-03", "Family suits a displaced threshold",
                "Where the threshold is displaced for a time, the family is one of those that the rule set recommends there.",
                Severity.NOTE,
                Stream.concat(ROWS.stream(), T_FORMS.stream()).collect(Collectors.toUnmodifiableSet()));
    }

    @Override
    void check(AidFacts facts, Findings findings) {
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
