package slopewright.edit.internal;

import java.util.Optional;

import slopewright.evaluation.SiteGround;
import slopewright.geometry.Profile;
import slopewright.model.ApproachHost;
import slopewright.siting.Side;
import slopewright.siting.SitingException;

/** How a lens rises and falls with surveyed ground when its unit is moved along the runway. */
public final class LensHeights {

    private final Optional<Profile> ground;

    private LensHeights(Optional<Profile> ground) {
        this.ground = ground;
    }

    /**
     * Reads the ground under the units of an approach; where none is known, or it cannot be used, lenses stay at their elevation.
     *
     * @param host the runway end or approach direction
     * @param side the side on which the units stand
     */
    public static LensHeights of(ApproachHost host, Side side) {
        try {
            return new LensHeights(SiteGround.of(host, side).profile());
        } catch (SitingException e) {
            return new LensHeights(Optional.empty());
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
