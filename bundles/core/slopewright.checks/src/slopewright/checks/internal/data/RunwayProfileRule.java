package slopewright.checks.internal.data;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.geometry.Profile;
import slopewright.messages.Words;
import slopewright.model.ApproachHost;
import slopewright.model.ProfilePoint;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;

/**
 * The profile of the runway passes through the threshold and the extremity of each end, to the decimetre to which elevations are published.
 * It counts from the extremity of the end that comes first. Severity fail: heights count from the threshold, and a glide path meets the
 * profile.
 */
public final class RunwayProfileRule extends HostRule {
    private static final double PUBLISHED_M = 0.1;

    /** Made by the service loader. */
    public RunwayProfileRule() {
        super("DATA-24", Severity.FAIL);
    }

    @Override
    void check(ApproachHost host, OutcomeCollector outcomes) {
        RunwayEnd end = runwayEnd(host);
        Runway runway = Projects.runway(end).orElseThrow();
        List<ProfilePoint> points = new ArrayList<>(runway.getCentreLine());
        points.removeIf(point -> point.getChainageM() == null || point.getElevationM() == null);
        boolean first = runway.getEnds().get(0) == end;
        if (points.size() < 2 || !first && runway.getLengthM() == null) {
            throw DataRules.nothingToCompare();
        }
        points.sort(Comparator.comparing(ProfilePoint::getChainageM));
        Profile profile = Profile.of(points.stream().mapToDouble(ProfilePoint::getChainageM).toArray(),
                points.stream().mapToDouble(ProfilePoint::getElevationM).toArray());
        double extremity = first ? 0 : runway.getLengthM();
        double threshold = extremity + (first ? 1 : -1) * RunwayGeometry.displacedM(end);
        boolean any = compare(end, profile, threshold, end.getThresholdElevationM(), "threshold", outcomes);
        any |= threshold != extremity && compare(end, profile, extremity, end.getExtremityElevationM(), "extremity", outcomes);
        if (!any) {
            throw DataRules.nothingToCompare();
        }
    }

    private static boolean compare(RunwayEnd end, Profile profile, double chainage, Double elevation, String what,
            OutcomeCollector outcomes) {
        if (elevation == null || !profile.covers(chainage)) {
            return false;
        }
        double height = profile.heightAt(chainage);
        outcomes.about(end).measured(Measure.within(elevation, height, PUBLISHED_M, "m"))
                .saying(what, Words.m(elevation), Words.m(height), Words.m(chainage), Words.m(PUBLISHED_M)).advising("correct").add();
        return true;
    }
}
