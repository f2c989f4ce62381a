package slopewright.checks.internal;

import java.util.Optional;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.model.Runway;

/** The indicator stands within the landing distance. */
public final class LandingDistanceRule extends AidRule {

    /** Made by the service loader. */
    public LandingDistanceRule() {
        super("DIST-02", "Within the landing distance", "Every unit stands beyond the threshold and within the landing distance.",
                Severity.FAIL, ALL);
    }

    @Override
    void check(AidFacts facts, Findings findings) {
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
