package slopewright.checks.internal.obstacle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.checks.Measure;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.Missing;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.SurveyReach;
import slopewright.geometry.Angles;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.Aerodrome;
import slopewright.model.ObstacleSurvey;
import slopewright.model.Project;
import slopewright.standards.CitedValue;

/**
 * How far the obstacle surveys of the place of an aid reach: each from the threshold or hover point outward, to either side of the extended
 * centre line. Obstacles that are entered say what stands there; only a survey says that nothing else does.
 */
public final class SurveyCover {
    private final List<ObstacleSurvey> surveys;

    private SurveyCover(List<ObstacleSurvey> surveys) {
        this.surveys = surveys;
    }

    /** Returns the cover at the place of an aid. */
    public static SurveyCover of(AidFacts facts) {
        Project project = facts.evaluation().project();
        Aerodrome aerodrome = project.getAerodrome();
        return new SurveyCover(aerodrome.getObstacleSurveys().stream().filter(survey -> survey.getHosts().contains(facts.host())).toList());
    }

    /** Returns what decides how far the surveys of a project reach, with equality. */
    static List<List<Object>> reaches(AidFacts facts) {
        return facts.evaluation().project().getAerodrome().getObstacleSurveys().stream().map(survey -> List.<Object>of(
                String.valueOf(survey.getReachM()), String.valueOf(survey.getHalfWidthM()), SurveyReach.isAllRound(survey),
                survey.getHosts().stream().map(host -> String.valueOf(host.getId())).toList())).toList();
    }

    /** Returns the surveys that name the place. */
    List<ObstacleSurvey> surveys() {
        return surveys;
    }

    /** Returns whether one of the surveys reaches over the whole of an area. */
    public boolean covers(ProtectionSurface area) {
        return surveys.stream().anyMatch(survey -> SurveyReach.covers(survey, area));
    }

    /** Returns how far a survey reaches against what an area needs, the nearer of distance and width; empty where it does not say. */
    static Optional<Measure> reach(ObstacleSurvey survey, ProtectionSurface area) {
        OptionalDouble half = SurveyReach.halfWidthM(survey);
        if (survey.getReachM() == null || half.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(Measure.worse(Measure.atLeast(survey.getReachM(), SurveyReach.neededReachM(survey, area), "m"),
                Measure.atLeast(half.getAsDouble(), SurveyReach.neededHalfWidthM(area), "m")));
    }

    /** Returns the areas in which something decides about an aid: its obstacle surface, and the sector of its signal where there is one. */
    static List<ProtectionSurface> areas(AidFacts facts) {
        List<ProtectionSurface> areas = new ArrayList<>();
        facts.evaluation().obstacles().value().map(SurfaceComparison::surface).ifPresent(areas::add);
        Optional<CitedValue> range = facts.rules().find("obstacle.signal-range-m");
        Optional<CitedValue> sector = facts.rules().find("obstacle.signal-sector-deg");
        if (range.isPresent() && sector.isPresent() && facts.evaluation().siting().value().isPresent()) {
            double turn = facts.aid().getAxisTurnDeg() == null ? 0 : facts.aid().getAxisTurnDeg();
            facts.laid().units().forEach(unit -> areas.add(new ProtectionSurface(unit.place().alongM(), 0, 0,
                    Angles.tanDeg(sector.get().value()), range.get().value(), 0, turn)));
        }
        return areas;
    }

    /** Returns what a survey does not say of itself; how far it reaches matters where it names a place. */
    static Missing lacking(ObstacleSurvey survey) {
        Missing missing = new Missing();
        SurveyReach.lacking(survey).forEach(missing::add);
        return missing;
    }
}
