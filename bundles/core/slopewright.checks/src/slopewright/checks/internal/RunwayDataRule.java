package slopewright.checks.internal;

import java.util.Optional;

import slopewright.checks.Findings;
import slopewright.checks.Severity;
import slopewright.model.Runway;

/** What the rule sets ask of a runway. */
public final class RunwayDataRule extends AidRule {

    /** Made by the service loader. */
    public RunwayDataRule() {
        super("DATA-02", "Runway data is complete",
                "Width and code number of the runway, its length or landing distance and the slope are there.",
                Severity.WARNING, ALL);
    }

    @Override
    void check(AidFacts facts, Findings findings) {
        if (!facts.atRunway()) {
            return;
        }
        Missing missing = new Missing();
        Optional<Runway> runway = facts.runway();
        missing.unless(runway.map(Runway::getWidthM).isPresent(), "runway width");
        missing.unless(runway.map(Runway::getCodeNumber).isPresent(), "code number of the runway");
        missing.unless(facts.end().getLandingDistanceM() != null || runway.map(Runway::getLengthM).isPresent(),
                "landing distance or runway length");
        boolean fromDescent = facts.aid().getGroundSpeedKt() != null && facts.aid().getDescentFtmin() != null;
        missing.unless(facts.aid().getSlopeDeg() != null || facts.host().getDesiredSlopeDeg() != null || fromDescent, "approach slope");
        Missing.report(findings, facts.aid(), missing.names(), "Width, code number, length and slope are known.");
    }
}
