package slopewright.checks.internal;

import java.util.Optional;

import slopewright.checks.Findings;
import slopewright.checks.Severity;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;

/** Some families are for runways, some for helipads. */
public final class FamilyHostRule extends AidRule {

    /** Made by the service loader. */
    public FamilyHostRule() {
        super("FAM-01", "Family suits the place", "An indicator for runways stands at a runway, one for helipads at a helipad.",
                Severity.FAIL, ALL);
    }

    @Override
    void check(AidFacts facts, Findings findings) {
        IndicatorFamily family = Families.get(facts.family());
        boolean met = facts.atRunway() ? family.atRunways() : family.atHelipads();
        String place = facts.atRunway() ? "a runway" : "a helipad";
        findings.decide(facts.aid(), met, Optional.empty(), met ? facts.familyName() + " may stand at " + place + "."
                : facts.familyName() + " is not for " + place + ". Choose another family.", severity());
    }
}
