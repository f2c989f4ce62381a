package slopewright.checks.internal.family;

import java.util.Optional;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.standards.CitedValue;

/**
 * What may mark the slope at a threshold that is displaced for a time. A note: the text recommends it, and the signal of another family
 * is true all the same.
 */
public final class TemporaryThresholdRule extends AidRule {

    /** Made by the service loader. */
    public TemporaryThresholdRule() {
        super("FAM-03", Severity.NOTE);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        Double displaced = facts.end().getDisplacedThresholdM();
        CitedValue row = facts.common("four-unit-row.temporary-threshold-code-to");
        if (displaced == null || displaced == 0) {
            throw Stop.notApplicable(Message.of("FAM-03.not-displaced"));
        }
        Optional<CitedValue> highest = facts.find("temporary-threshold-code-to");
        OutcomeCollector.Entry entry = outcomes.about(facts.aid()).resting(highest.orElse(row));
        int code = facts.code();
        entry.met(highest.isPresent() && code <= highest.get().value())
                .saying("displaced", Words.m(displaced), facts.familyName(), Words.count(code)).advising("row").add();
    }
}
