package slopewright.siting.internal;

import java.util.Optional;

import slopewright.geometry.Angles;
import slopewright.geometry.Profile;
import slopewright.siting.Input;
import slopewright.siting.LevelSolution;
import slopewright.siting.SitingException;
import slopewright.siting.SitingRequest;

/** The height of a lens above the threshold wherever the unit may stand: straight pieces joined together. */
final class Ground {

    private final Optional<Profile> profile;
    private final double lensAtThresholdM;
    private final double rise;

    private Ground(Optional<Profile> profile, double lensAtThresholdM, double rise) {
        this.profile = profile;
        this.lensAtThresholdM = lensAtThresholdM;
        this.rise = rise;
    }

    /**
     * Reads the ground of a request.
     *
     * @throws SitingException where two descriptions of the ground contradict each other
     */
    static Ground of(SitingRequest request) {
        double above = request.number(Input.LENS_ABOVE_GROUND).orElse(0.0);
        if (request.has(Input.LENS_HEIGHT) && (request.has(Input.GROUND_SLOPE) || request.ground().isPresent())) {
            throw new SitingException("the lens height above threshold (lens-height-m) and a ground slope or profile exclude each "
                    + "other; give one");
        }
        if (request.ground().isPresent()) {
            return new Ground(request.ground().map(ground -> ground.raised(above)), 0, 0);
        }
        if (request.has(Input.LENS_HEIGHT)) {
            return new Ground(Optional.empty(), request.need(Input.LENS_HEIGHT), 0);
        }
        return new Ground(Optional.empty(), above, request.number(Input.GROUND_SLOPE).orElse(0.0) / 100);
    }

    boolean isLevel() {
        return profile.isEmpty() && rise == 0 && lensAtThresholdM == 0;
    }

    /** Returns the lens above threshold, metres. */
    double lensAt(double alongM) {
        if (profile.isEmpty()) {
            return lensAtThresholdM + rise * alongM;
        }
        if (!profile.get().covers(alongM)) {
            throw new SitingException(String.format(java.util.Locale.ROOT,
                    "the ground profile reaches from %.1f m to %.1f m along the runway; the unit would stand at %.1f m. Survey further "
                            + "or give a"
                            + " ground slope",
                    profile.get().firstM(), profile.get().lastM(), alongM));
        }
        return profile.get().heightAt(alongM);
    }

    /**
     * Finds where a plane that rises towards the approach passes a height over the threshold: the place where
     * {@code place * tan(angle) + lens = height}. Every straight piece of ground is solved exactly, so there is no remainder.
     *
     * @param heightM  height over the threshold, metres
     * @param angleDeg angle of the plane, decimal degrees
     * @param levelFromM level difference from which the published single step moves the unit
     */
    LevelSolution solve(double heightM, double angleDeg, double levelFromM) {
        double tan = Angles.tanDeg(angleDeg);
        double level = heightM / tan;
        if (profile.isEmpty()) {
            double steep = tan + rise;
            if (steep <= 0) {
                throw new SitingException("the ground falls away as steeply as the beam; no place gives the eye height");
            }
            double distance = (heightM - lensAtThresholdM) / steep;
            return result(distance, level, tan, levelFromM, 1, "one straight piece of ground, solved exactly");
        }
        Profile ground = profile.get();
        for (int i = 1; i < ground.size(); i++) {
            double before = residual(ground, i - 1, tan, heightM);
            double after = residual(ground, i, tan, heightM);
            if (before <= 0 && after >= 0) {
                double share = before == after ? 0 : before / (before - after);
                double distance = ground.alongM(i - 1) + share * (ground.alongM(i) - ground.alongM(i - 1));
                return result(distance, level, tan, levelFromM, i,
                        "first straight piece of the profile that gives the eye height, solved exactly");
            }
        }
        throw new SitingException(String.format(java.util.Locale.ROOT,
                "no place on the ground profile from %.1f m to %.1f m gives an eye height of %.2f m; survey further", ground.firstM(),
                ground.lastM(), heightM));
    }

    private static double residual(Profile ground, int index, double tan, double heightM) {
        return ground.alongM(index) * tan + ground.heightM(index) - heightM;
    }

    private LevelSolution result(double distance, double level, double tan, double levelFromM, int pieces, String stopRule) {
        double singleStep = level;
        if (profile.isEmpty() || profile.get().covers(level)) {
            double difference = lensAt(level);
            singleStep = Math.abs(difference) > levelFromM ? level - difference / tan : level;
        }
        return new LevelSolution(distance, pieces, stopRule, singleStep, lensAt(distance));
    }
}
