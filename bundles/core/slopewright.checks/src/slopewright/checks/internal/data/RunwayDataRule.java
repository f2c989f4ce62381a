package slopewright.checks.internal.data;

import java.util.Optional;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Missing;
import slopewright.messages.Message;
import slopewright.model.Runway;

/** What the rule sets ask of a runway. A warning: what rests on a missing entry is not evaluated by the rule that needs it. */
public final class RunwayDataRule extends AidRule {
    /** Made by the service loader. */
    public RunwayDataRule() {
        super("DATA-02", Severity.WARNING);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        facts.end();
        Missing missing = new Missing();
        Optional<Runway> runway = facts.runway();
        missing.unless(runway.map(Runway::getWidthM).isPresent(), "missing.runway-width");
        missing.unless(runway.map(Runway::getCodeNumber).isPresent(), "missing.code-number");
        missing.unless(facts.end().getLandingDistanceM() != null || runway.map(Runway::getLengthM).isPresent(),
                "missing.landing-distance");
        boolean fromDescent = facts.aid().getGroundSpeedKt() != null && facts.aid().getDescentFtmin() != null;
        missing.unless(facts.aid().getSlopeDeg() != null || facts.host().getDesiredSlopeDeg() != null || fromDescent, "missing.slope");
        missing.report(facts.aid(), outcomes, Message.of("DATA-02.complete"));
    }
}
