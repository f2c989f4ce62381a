package slopewright.checks.internal.data;

import java.util.Optional;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Missing;
import slopewright.model.Runway;

/** What the rule sets ask of a runway. */
public final class RunwayDataRule extends AidRule {

    /** Made by the service loader. */
    public RunwayDataRule() {
        super("DATA-02", Severity.WARNING);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
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
