package slopewright.checks.internal.data;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.evaluation.SiteGround;
import slopewright.messages.Words;
import slopewright.model.ApproachHost;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.ElementNames;

/**
 * The levels that were surveyed beside the runway lie on the site profile that was typed for it, within what a survey of levels may be out.
 * Severity fail: the profile carries the lenses, and with them the eye height over the threshold and the obstacle surface.
 */
public final class GroundLevelRule extends HostRule {
    /** Made by the service loader. */
    public GroundLevelRule() {
        super("DATA-23", Severity.FAIL);
    }

    @Override
    void check(ApproachHost host, OutcomeCollector outcomes) {
        RunwayEnd end = runwayEnd(host);
        boolean surveyed = Projects.project(host).map(project -> !project.getAerodrome().getGroundLevels().isEmpty()).orElse(false);
        if (!surveyed || end.getSiteProfile().isEmpty()) {
            throw DataRules.nothingToCompare();
        }
        List<SiteGround.Contradiction> contradictions = SiteGround.contradictions(host);
        for (SiteGround.Contradiction found : contradictions) {
            outcomes.about(found.level()).measured(Measure.within(found.surveyedM(), found.profileM(), SiteGround.SURVEY_TOLERANCE_M, "m"))
                    .saying("differs", Words.m(found.surveyedM()), Words.m(found.alongM()), ElementNames.of(host),
                            Words.m(found.profileM()), Words.m(SiteGround.SURVEY_TOLERANCE_M)).advising("correct").add();
        }
        if (contradictions.isEmpty()) {
            outcomes.about(end).met(true).saying("agree", ElementNames.of(host), Words.m(SiteGround.SURVEY_TOLERANCE_M)).add();
        }
    }
}
