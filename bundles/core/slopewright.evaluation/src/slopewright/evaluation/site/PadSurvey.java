package slopewright.evaluation.site;

import slopewright.model.Aerodrome;
import slopewright.model.Helipad;
import slopewright.model.ObstacleSurvey;
import slopewright.model.SlopewrightFactory;

/** Enters the survey of what stands round the pads of a new site, as far as it is known. */
final class PadSurvey {
    private final NewSite site;

    PadSurvey(NewSite site) {
        this.site = site;
    }

    /** Enters what is known; a survey of which nothing is known is entered where the template has one, so that a rule asks for the rest. */
    void enter(Aerodrome aerodrome) {
        if (site.number(SiteNumber.SURVEY_REACH).isPresent() && aerodrome.getObstacleSurveys().isEmpty()) {
            aerodrome.getHelipads().forEach(pad -> aerodrome.getObstacleSurveys().add(allRound(pad)));
        }
        for (ObstacleSurvey survey : aerodrome.getObstacleSurveys()) {
            site.number(SiteNumber.SURVEY_REACH).ifPresent(survey::setReachM);
            site.number(SiteNumber.SURVEY_PLACE).ifPresent(survey::setHorizontalAccuracyM);
            site.number(SiteNumber.SURVEY_HEIGHT).ifPresent(survey::setVerticalAccuracyM);
            site.text(SiteText.SURVEY_SOURCE).ifPresent(survey::setSource);
            site.text(SiteText.SURVEY_DATE).ifPresent(survey::setDate);
        }
    }

    private ObstacleSurvey allRound(Helipad pad) {
        ObstacleSurvey survey = SlopewrightFactory.eINSTANCE.createObstacleSurvey();
        survey.setName(site.names().survey());
        survey.setAllRound(true);
        survey.getHosts().addAll(pad.getDirections());
        return survey;
    }
}
