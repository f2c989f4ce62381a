package slopewright.checks.internal.eye;

import java.util.Optional;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Words;
import slopewright.model.Runway;

/** The indicator stands within the landing distance. */
public final class LandingDistanceRule extends AidRule {

    /** Made by the service loader. */
    public LandingDistanceRule() {
        super("DIST-02", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        if (!facts.atRunway()) {
            return;
        }
        Double landing = facts.end().getLandingDistanceM();
        if (landing == null) {
            Double length = facts.runway().map(Runway::getLengthM).orElse(null);
            Double displaced = facts.end().getDisplacedThresholdM();
            landing = AidFacts.need(length, "landing distance or runway length") - (displaced == null ? 0 : displaced);
        }
        double least = facts.units().stream().mapToDouble(UnitAt::alongM).min().orElseThrow();
        double most = facts.units().stream().mapToDouble(UnitAt::alongM).max().orElseThrow();
        boolean before = least < 0;
        Measure measure = before ? Measure.atLeast(least, 0, "m") : Measure.atMost(most, landing, "m");
        compare(findings, facts.aid(), measure, Optional.empty(), "The units stand " + Words.m(least) + " to " + Words.m(most)
                + " from the threshold; the landing distance is " + Words.m(landing) + ".", "Move the indicator onto the runway.",
                severity());
    }
}
