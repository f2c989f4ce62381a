package slopewright.checks.internal.data;

import java.time.LocalDate;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.ProjectRule;
import slopewright.checks.internal.Stop;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.obstacles.SurveyDays;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.MagneticVariation;
import slopewright.model.util.Projects;
import slopewright.siting.magnetic.Declination;
import slopewright.siting.magnetic.MagneticModel;
import slopewright.siting.site.SiteFrame;

/**
 * A magnetic variation that was entered agrees with the model of the Earth's field to half a degree, which local disturbance and the age of
 * a chart rarely exceed, and its annual change to a tenth of a degree. A warning: the obstacle surface rests on true bearings; a unit that
 * is set by compass is off by the difference, and its set-up card is not ready.
 */
public final class MagneticVariationRule extends ProjectRule {
    private static final double ALLOWED_DEG = 0.5;
    private static final double ALLOWED_CHANGE_DEG = 0.1;

    /** Made by the service loader. */
    public MagneticVariationRule() {
        super("DATA-21", Severity.WARNING);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        Aerodrome aerodrome = evaluation.project().getAerodrome();
        if (aerodrome != null && aerodrome.getMagneticVariation() != null) {
            AidRule.guarded(aerodrome.getMagneticVariation(), outcomes, () -> compare(aerodrome, outcomes));
        }
    }

    private static void compare(Aerodrome aerodrome, OutcomeCollector outcomes) {
        MagneticVariation entered = aerodrome.getMagneticVariation();
        if (entered.getVariationDeg() == null) {
            throw Stop.missing(Message.of("missing.variation"));
        }
        LocalDate dated = SurveyDays.date(entered.getDate()).orElseThrow(() -> Stop.missing(Message.of("missing.variation-date")));
        LocalDate day = Projects.project(aerodrome).flatMap(project -> SurveyDays.date(project.getDate())).orElse(dated);
        double annual = entered.getAnnualChangeDeg() == null ? 0 : entered.getAnnualChangeDeg();
        double brought = entered.getVariationDeg() + annual * (MagneticModel.decimalYear(day) - MagneticModel.decimalYear(dated));
        SiteFrame.LatLon place = AerodromePoint.of(aerodrome).orElseThrow(() -> Stop.missing(Message.of("missing.latitude-longitude")));
        double height = (aerodrome.getElevationM() == null ? 0 : aerodrome.getElevationM())
                + (aerodrome.getGeoidOffsetM() == null ? 0 : aerodrome.getGeoidOffsetM());
        Declination model = MagneticModel.bundled().declination(place.latitudeDeg(), place.longitudeDeg(), height, day);
        double apart = RunwayGeometry.apartDeg(brought, model.declinationDeg());
        outcomes.about(entered).measured(Measure.atMost(apart, ALLOWED_DEG, "deg"))
                .saying("compared", Words.degrees(brought), Words.name(day.toString()), Words.name(model.model()),
                        Words.degrees(model.declinationDeg()), Words.degrees(ALLOWED_DEG)).advising("correct").add();
        if (entered.getAnnualChangeDeg() != null) {
            outcomes.about(entered).measured(Measure.within(annual, model.annualChangeDeg(), ALLOWED_CHANGE_DEG, "deg"))
                    .saying("change", Words.deg(annual), Words.name(model.model()), Words.deg(model.annualChangeDeg()),
                            Words.deg(ALLOWED_CHANGE_DEG)).advising("correct").add();
        }
    }
}
