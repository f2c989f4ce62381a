package slopewright.checks.internal.plausible;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.ProjectRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.data.AerodromePoint;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.siting.site.GeoidModel;
import slopewright.siting.site.SiteFrame;

/**
 * The geoid offset that was entered is that of the place, to what a coarse model of the geoid misses and a local datum of heights may lie
 * off (own band). It tells a wrong sign, feet for metres and another place; what lies farther off than the model does nearly everywhere, by
 * a wrong digit or in a trench, is not evaluated until the aerodrome was read back. A warning: no height of the project rests on it; maps
 * that are handed over with heights above the ellipsoid do.
 */
public final class GeoidOffsetRule extends ProjectRule {
    private static final double LOCAL_DATUM_M = 2;

    /** Made by the service loader. */
    public GeoidOffsetRule() {
        super("DATA-66", Severity.WARNING);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        Aerodrome aerodrome = evaluation.project().getAerodrome();
        if (aerodrome != null && aerodrome.getGeoidOffsetM() != null) {
            AidRule.guarded(aerodrome, outcomes, () -> compare(aerodrome, new SecondReading(evaluation.project(), outcomes), outcomes));
        }
    }

    private static void compare(Aerodrome aerodrome, SecondReading reading, OutcomeCollector outcomes) {
        SiteFrame.LatLon place = AerodromePoint.of(aerodrome).orElseThrow(() -> Stop.missing(Message.of("missing.latitude-longitude")));
        double height = GeoidModel.bundled().heightM(place.latitudeDeg(), place.longitudeDeg());
        double off = Math.abs(aerodrome.getGeoidOffsetM() - height);
        double likely = GeoidModel.MOSTLY_MISSED_M + LOCAL_DATUM_M;
        double allowed = GeoidModel.MISSED_M + LOCAL_DATUM_M;
        if (off > likely && off <= allowed) {
            reading.ask(aerodrome, Message.of("DATA-66.far", Words.m(aerodrome.getGeoidOffsetM()), Words.wholeM(height),
                    Words.wholeM(likely)));
            return;
        }
        double within = off <= likely ? likely : allowed;
        outcomes.about(aerodrome).measured(Measure.within(aerodrome.getGeoidOffsetM(), height, within, "m"))
                .saying("compared", Words.m(aerodrome.getGeoidOffsetM()), Words.wholeM(height), Words.wholeM(within))
                .advising("correct").add();
    }
}
