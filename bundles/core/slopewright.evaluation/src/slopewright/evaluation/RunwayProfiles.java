package slopewright.evaluation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

import slopewright.geometry.Profile;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ProfilePoint;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.ElementNames;
import slopewright.siting.SitingException;

/** Profiles of the model in the frame of a runway end. */
public final class RunwayProfiles {

    private RunwayProfiles() {
    }

    /**
     * Returns the profile of a runway's centre line as an end sees it. Chainages of the model count from the extremity at the end that is
     * listed first; the second end counts them backward from its own.
     *
     * @param end a runway end
     * @return heights above its threshold, places counted from there; empty where the model has no profile
     * @throws SitingException where there is one that cannot be used; the message says why
     */
    public static Optional<Profile> centreLine(RunwayEnd end) {
        Optional<Runway> runway = Projects.runway(end);
        if (runway.isEmpty() || end.getThresholdElevationM() == null || usable(runway.get().getCentreLine()).size() < 2) {
            return Optional.empty();
        }
        double displaced = end.getDisplacedThresholdM() == null ? 0 : end.getDisplacedThresholdM();
        ToDoubleFunction<ProfilePoint> place;
        if (runway.get().getEnds().get(0) == end) {
            place = point -> point.getChainageM() - displaced;
        } else if (runway.get().getLengthM() == null) {
            throw new SitingException(Message.of("evaluation.refused.centre-line-without-length",
                    ElementNames.of(runway.get())));
        } else {
            double length = runway.get().getLengthM();
            place = point -> length - displaced - point.getChainageM();
        }
        return profile(runway.get().getCentreLine(), place, end.getThresholdElevationM(), "evaluation.refused.centre-line", end);
    }

    /**
     * Makes a profile of points.
     *
     * @param points      the points; those without place or elevation are left out
     * @param place       tells the place of a point, metres
     * @param thresholdM  elevation from which the heights count, metres
     * @param key         key of the refusal
     * @param end         the end that the refusal names
     * @return the profile, empty where there are fewer than two points
     * @throws SitingException where two points lie at one place
     */
    static Optional<Profile> profile(List<ProfilePoint> points, ToDoubleFunction<ProfilePoint> place, double thresholdM, String key,
            RunwayEnd end) {
        List<ProfilePoint> usable = usable(points);
        if (usable.size() < 2) {
            return Optional.empty();
        }
        usable.sort(Comparator.comparingDouble(place));
        double[] along = usable.stream().mapToDouble(place).toArray();
        double[] heights = usable.stream().mapToDouble(point -> point.getElevationM() - thresholdM).toArray();
        for (int i = 1; i < along.length; i++) {
            if (along[i] <= along[i - 1]) {
                throw new SitingException(Message.of(key, ElementNames.of(end), Words.m(along[i])));
            }
        }
        return Optional.of(Profile.of(along, heights));
    }

    private static List<ProfilePoint> usable(List<ProfilePoint> points) {
        List<ProfilePoint> usable = new ArrayList<>(points);
        usable.removeIf(point -> point.getChainageM() == null || point.getElevationM() == null
                || !Double.isFinite(point.getChainageM()) || !Double.isFinite(point.getElevationM()));
        return usable;
    }
}
