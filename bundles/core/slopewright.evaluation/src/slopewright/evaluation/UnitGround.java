package slopewright.evaluation;

import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.geometry.Profile;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.LightUnit;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;

/** How the ground under the units of an aid rises and falls, so that a lens keeps its height above it when its unit is moved. */
public final class UnitGround {
    private static final double STEPS_PER_M = 1000;

    private final Optional<Profile> profile;

    private UnitGround(Optional<Profile> profile) {
        this.profile = profile;
    }

    /**
     * Reads the ground under an aid: the site profile, or the levels that were surveyed. Where there is none that can be used, lenses stay
     * at their elevation.
     *
     * @param aid an aid, in a runway end or approach direction or in none
     * @return the ground
     */
    public static UnitGround of(ApproachAid aid) {
        Optional<ApproachHost> host = Projects.host(aid);
        try {
            return new UnitGround(host.flatMap(place -> SiteGround.of(place, AidRequests.side(aid)).profile()));
        } catch (SitingException e) {
            return new UnitGround(Optional.empty());
        }
    }

    /** Returns whether the ground is known. */
    public boolean isKnown() {
        return profile.isPresent();
    }

    /**
     * Returns the height of the ground.
     *
     * @param alongM place along the runway, metres from the threshold
     * @return metres above the threshold or the TLOF; empty beyond the ends of what was measured
     */
    public OptionalDouble heightM(double alongM) {
        return profile.filter(ground -> ground.covers(alongM)).map(ground -> OptionalDouble.of(ground.heightAt(alongM)))
                .orElseGet(OptionalDouble::empty);
    }

    /**
     * Returns how much the ground rises from one place to another.
     *
     * @param fromM place along the runway, metres from the threshold
     * @param toM   place along the runway, metres from the threshold
     * @return metres; beyond the ends of what was measured its last level goes on; zero where nothing was
     */
    public double riseM(double fromM, double toM) {
        return profile.map(ground -> levelM(ground, toM) - levelM(ground, fromM)).orElse(0.0);
    }

    private static double levelM(Profile ground, double alongM) {
        return ground.heightAt(Math.max(ground.firstM(), Math.min(ground.lastM(), alongM)));
    }

    /**
     * Sets a unit down at a distance along the runway, to the millimetre; its lens keeps its height above the ground. Does nothing where
     * its place there was not known.
     *
     * @param unit   a unit
     * @param alongM the new place, metres from the threshold
     */
    public void setAlong(LightUnit unit, double alongM) {
        Double from = unit.getAlongM();
        double to = rounded(alongM);
        if (from == null || from == to) {
            return;
        }
        unit.setAlongM(to);
        double rise = riseM(from, to);
        if (unit.getLensElevationM() != null && rise != 0) {
            unit.setLensElevationM(rounded(unit.getLensElevationM() + rise));
        }
    }

    /** Rounds to what a field party can set out: millimetres. */
    public static double rounded(double valueM) {
        return Math.round(valueM * STEPS_PER_M) / STEPS_PER_M;
    }
}
