package slopewright.checks.internal.family;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.messages.Words;
import slopewright.standards.CitedValue;

/**
 * The family is still one of the standard systems. A note: the text recommends that it be no longer used as one, and an aid of it that
 * stands shows a true slope all the same.
 */
public final class StandardSystemRule extends AidRule {
    /** Made by the service loader. */
    public StandardSystemRule() {
        super("FAM-04", Severity.NOTE);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue year = facts.value("not-standard-from-year");
        outcomes.about(facts.aid()).met(false).resting(year)
                .saying("outdated", facts.familyName(), Words.name(String.valueOf(Math.round(year.value())))).advising("row")
                .add();
    }
}
