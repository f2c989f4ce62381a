package slopewright.edit.internal;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import slopewright.geometry.Profile;
import slopewright.model.ApproachHost;
import slopewright.model.ProfilePoint;
import slopewright.model.RunwayEnd;

/** How a lens rises and falls with surveyed ground when its unit is moved along the runway. */
public final class LensHeights {

    private final Optional<Profile> ground;

    private LensHeights(Optional<Profile> ground) {
        this.ground = ground;
    }

    /** Reads the site profile of a runway end; without one, or with one that can not be used, lenses stay at their elevation. */
    public static LensHeights of(ApproachHost host) {
        return new LensHeights(host instanceof RunwayEnd end ? profile(end) : Optional.empty());
    }

    private static Optional<Profile> profile(RunwayEnd end) {
        List<ProfilePoint> points = end.getSiteProfile().stream()
                .filter(point -> point.getChainageM() != null && point.getElevationM() != null)
                .sorted(Comparator.comparing(ProfilePoint::getChainageM)).toList();
        if (points.size() < 2) {
            return Optional.empty();
        }
        try {
            return Optional.of(Profile.of(points.stream().mapToDouble(ProfilePoint::getChainageM).toArray(),
                    points.stream().mapToDouble(ProfilePoint::getElevationM).toArray()));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /**
     * Returns how much the ground rises from one place to another.
     *
     * @param fromM place along the runway, metres
     * @param toM   place along the runway, metres
     * @return metres; beyond the ends of the profile its last level goes on
     */
    public double riseM(double fromM, double toM) {
        return ground.map(profile -> levelM(profile, toM) - levelM(profile, fromM)).orElse(0.0);
    }

    private static double levelM(Profile profile, double alongM) {
        return profile.heightAt(Math.max(profile.firstM(), Math.min(profile.lastM(), alongM)));
    }
}
