package slopewright.checks.internal.family;

import java.util.Optional;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;

/** Some families are for runways, some for helipads. */
public final class FamilyHostRule extends AidRule {

    /** Made by the service loader. */
    public FamilyHostRule() {
        super("FAM-01", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        IndicatorFamily family = facts.indicator();
        boolean met = facts.atRunway() ? family.atRunways() : family.atHelipads();
        String place = facts.atRunway() ? "a runway" : "a helipad";
        findings.decide(facts.aid(), met, Optional.empty(), met ? facts.familyName() + " may stand at " + place + "."
                : facts.familyName() + " is not for " + place + ". Choose another family.", severity());
    }
}
