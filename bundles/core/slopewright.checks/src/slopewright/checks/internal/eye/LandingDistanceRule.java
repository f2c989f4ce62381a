package slopewright.checks.internal.eye;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Runway;

/**
 * The indicator stands within the landing distance: before or behind it no aeroplane lands on its signal. Severity fail for that reason.
 */
public final class LandingDistanceRule extends AidRule {
    /** Made by the service loader. */
    public LandingDistanceRule() {
        super("DIST-02", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        Double landing = facts.end().getLandingDistanceM();
        if (landing == null) {
            Double length = facts.runway().map(Runway::getLengthM).orElse(null);
            Double displaced = facts.end().getDisplacedThresholdM();
            landing = AidFacts.need(length, Message.of("missing.landing-distance")) - (displaced == null ? 0 : displaced);
        }
        double least = facts.units().stream().mapToDouble(UnitAt::alongM).min().orElseThrow();
        double most = facts.units().stream().mapToDouble(UnitAt::alongM).max().orElseThrow();
        outcomes.about(facts.aid()).measured(least < 0 ? Measure.atLeast(least, 0, "m") : Measure.atMost(most, landing, "m"))
                .saying("compared", Words.m(least), Words.m(most), Words.m(landing)).advising("move").add();
    }
}
