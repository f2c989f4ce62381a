package slopewright.checks.internal.plausible;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.geometry.Profile;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.ProfilePoint;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.siting.ElementNames;

/**
 * The ground beside a runway is as high as the runway there, to five metres (own band: units stand on the strip, which falls or rises from
 * the edge by a few in a hundred); where the centre line is not known, as high as the threshold and three in a hundred of the distance from
 * it. Severity fail: the ground carries the lenses.
 */
public final class ProfileBesideRunwayRule extends ProjectRule {
    private static final double BESIDE_M = 5;
    private static final double RISE = 0.03;

    /** Made by the service loader. */
    public ProfileBesideRunwayRule() {
        super("DATA-46", Severity.FAIL);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        Aerodrome aerodrome = evaluation.project().getAerodrome();
        if (aerodrome != null) {
            aerodrome.getRunways().forEach(runway -> runway.getEnds().forEach(end -> check(runway, end, outcomes)));
        }
    }

    private static void check(Runway runway, RunwayEnd end, OutcomeCollector outcomes) {
        for (ProfilePoint point : end.getSiteProfile()) {
            Double threshold = end.getThresholdElevationM();
            if (threshold == null || point.getChainageM() == null || point.getElevationM() == null) {
                continue;
            }
            double along = point.getChainageM();
            Optional<Double> centre = centreM(runway, end, along);
            double room = centre.isPresent() ? BESIDE_M : BESIDE_M + RISE * Math.abs(along);
            double level = centre.orElse(threshold);
            outcomes.about(point).measured(Measure.within(point.getElevationM(), level, room, "m"))
                    .saying("compared", ElementNames.of(end), Words.m(along), Words.m(point.getElevationM()), Words.m(level), Words.m(room))
                    .advising("correct").add();
        }
    }

    private static Optional<Double> centreM(Runway runway, RunwayEnd end, double along) {
        List<ProfilePoint> points = new ArrayList<>(runway.getCentreLine());
        points.removeIf(point -> point.getChainageM() == null || point.getElevationM() == null);
        boolean first = runway.getEnds().get(0) == end;
        if (points.size() < 2 || !first && runway.getLengthM() == null) {
            return Optional.empty();
        }
        double displaced = end.getDisplacedThresholdM() == null ? 0 : end.getDisplacedThresholdM();
        double chainage = first ? displaced + along : runway.getLengthM() - displaced - along;
        points.sort(Comparator.comparing(ProfilePoint::getChainageM));
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i).getChainageM() <= points.get(i - 1).getChainageM()) {
                return Optional.empty();
            }
        }
        Profile profile = Profile.of(points.stream().mapToDouble(ProfilePoint::getChainageM).toArray(),
                points.stream().mapToDouble(ProfilePoint::getElevationM).toArray());
        return profile.covers(chainage) ? Optional.of(profile.heightAt(chainage)) : Optional.empty();
    }
}
