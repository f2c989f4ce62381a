package slopewright.checks.internal.family;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;

/** Some families are for runways, some for helipads. Severity fail: the signal is read by those for whom it was not made. */
public final class FamilyHostRule extends AidRule {

    /** Made by the service loader. */
    public FamilyHostRule() {
        super("FAM-01", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        boolean suits = facts.atRunway() ? facts.indicator().atRunways() : facts.indicator().atHelipads();
        outcomes.about(facts.aid()).met(suits)
                .saying(facts.atRunway() ? suits ? "for-runways" : "not-for-runways" : suits ? "for-helipads" : "not-for-helipads",
                        facts.familyName())
                .advising("choose").add();
    }
}
