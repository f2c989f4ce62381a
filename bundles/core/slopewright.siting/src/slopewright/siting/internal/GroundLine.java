package slopewright.siting.internal;

import java.util.Optional;

import slopewright.geometry.Profile;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Input;
import slopewright.siting.LevelSolution;
import slopewright.siting.SitingException;
import slopewright.siting.SitingRequest;

/** The height of a lens above the threshold wherever the unit may stand: straight pieces joined together. */
final class GroundLine {

    private final Optional<Profile> profile;
    private final double lensAtThresholdM;
    private final double rise;

    private GroundLine(Optional<Profile> profile, double lensAtThresholdM, double rise) {
        this.profile = profile;
        this.lensAtThresholdM = lensAtThresholdM;
        this.rise = rise;
    }

    /**
     * Reads the ground of a request.
     *
     * @throws SitingException where two descriptions of the ground contradict each other
     */
    static GroundLine of(SitingRequest request) {
        double above = request.number(Input.LENS_ABOVE_GROUND).orElse(0.0);
        if (request.has(Input.LENS_HEIGHT) && (request.has(Input.GROUND_SLOPE) || request.ground().isPresent())) {
            throw new SitingException(Message.of("siting.refused.two-grounds", Input.LENS_HEIGHT.message(),
                    Input.GROUND_SLOPE.message()));
        }
        if (request.ground().isPresent()) {
            return new GroundLine(request.ground().map(ground -> ground.raised(above)), 0, 0);
        }
        if (request.has(Input.LENS_HEIGHT)) {
            return new GroundLine(Optional.empty(), request.need(Input.LENS_HEIGHT), 0);
        }
        return new GroundLine(Optional.empty(), above, request.number(Input.GROUND_SLOPE).orElse(0.0) / 100);
    }

    /**
     * Returns the lens above threshold, metres.
     *
     * @throws SitingException where the profile does not reach the place
     */
    double lensAt(double alongM) {
        if (profile.isEmpty()) {
            return lensAtThresholdM + rise * alongM;
        }
        if (!profile.get().covers(alongM)) {
            throw new SitingException(Message.of("siting.refused.profile-end", Words.m(profile.get().firstM()),
                    Words.m(profile.get().lastM()), Words.m(alongM)));
        }
        return profile.get().heightAt(alongM);
    }

    /**
     * Finds where a plane that rises towards the approach passes a height over the threshold: the place where
     * {@code place * tan + lens = height}. Every straight piece of ground is solved exactly, so there is no remainder.
     *
     * @param heightM    height over the threshold, metres
     * @param tan        tangent of the angle of the plane along the runway
     * @param levelFromM level difference from which the published single step moves the unit, metres
     * @throws SitingException where no place on the ground gives the height
     */
    LevelSolution solve(double heightM, double tan, double levelFromM) {
        double level = heightM / tan;
        if (profile.isEmpty()) {
            double steep = tan + rise;
            if (steep <= 0) {
                throw new SitingException(Message.of("siting.refused.ground-falls-away"));
            }
            return result((heightM - lensAtThresholdM) / steep, level, tan, levelFromM, 1, LevelSolution.Method.UNIFORM_GROUND);
        }
        Profile.Crossing found = profile.get().firstCrossing(heightM, tan).orElseThrow(() -> new SitingException(Message.of(
                "siting.refused.no-place", Words.m(profile.get().firstM()), Words.m(profile.get().lastM()), Words.m(heightM))));
        return result(found.alongM(), level, tan, levelFromM, found.piece(), LevelSolution.Method.PROFILE);
    }

    private LevelSolution result(double distance, double level, double tan, double levelFromM, int pieces, LevelSolution.Method method) {
        double singleStep = level;
        if (profile.isEmpty() || profile.get().covers(level)) {
            double difference = lensAt(level);
            singleStep = Math.abs(difference) > levelFromM ? level - difference / tan : level;
        }
        return new LevelSolution(distance, pieces, method, singleStep, lensAt(distance));
    }
}
