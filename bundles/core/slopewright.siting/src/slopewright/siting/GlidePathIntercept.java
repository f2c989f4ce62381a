package slopewright.siting;

import java.util.Locale;
import java.util.Optional;

import slopewright.geometry.Angles;
import slopewright.geometry.Profile;
import slopewright.messages.Message;
import slopewright.messages.Words;

/**
 * Where an electronic glide path meets the runway profile. A path that is given by its height over the threshold (reference datum height,
 * TCH) has its origin where it meets the profile; a path that is given by the distance of its origin has the origin on the profile there.
 *
 * @param originM  threshold to the origin, metres
 * @param groundM  height of the runway above the threshold at the origin, metres
 * @param heightM  height of the path over the threshold, metres
 * @param angleDeg angle of the path, decimal degrees
 * @param datum    what the height of the runway at the origin is known from
 */
public record GlidePathIntercept(double originM, double groundM, double heightM, double angleDeg, Datum datum) {

    /** What is known of the runway along its centre line. */
    public enum Datum {
        /** A profile of the centre line. */
        PROFILE,
        /** A uniform slope. */
        UNIFORM_SLOPE,
        /** Nothing: it is taken as level with the threshold. */
        LEVEL;

        /** Returns the word used in files and output. */
        public String key() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /**
     * Works out the intercept of the glide path that a request describes; its angle is the approach slope where none was given.
     *
     * @param request  the request
     * @param slopeDeg the approach slope, decimal degrees
     * @return the intercept, empty where the request describes no glide path
     * @throws SitingException where the path does not meet the runway, or the profile does not reach as far; the message says which
     */
    public static Optional<GlidePathIntercept> of(SitingRequest request, double slopeDeg) {
        double angle = request.number(Input.GLIDE_PATH_ANGLE).orElse(slopeDeg);
        if (request.has(Input.GLIDE_PATH_ORIGIN)) {
            return Optional.of(ofOrigin(request, request.need(Input.GLIDE_PATH_ORIGIN), angle));
        }
        return request.number(Input.REFERENCE_DATUM_HEIGHT).map(height -> ofHeight(request, height, angle));
    }

    private static GlidePathIntercept ofOrigin(SitingRequest request, double originM, double angleDeg) {
        double ground = groundM(request, originM);
        return new GlidePathIntercept(originM, ground, ground + originM * Angles.tanDeg(angleDeg), angleDeg, datum(request));
    }

    private static GlidePathIntercept ofHeight(SitingRequest request, double heightM, double angleDeg) {
        double tan = Angles.tanDeg(angleDeg);
        double origin;
        if (request.runwayProfile().isPresent()) {
            Profile profile = request.runwayProfile().get();
            origin = profile.firstCrossing(heightM, tan).map(Profile.Crossing::alongM).filter(along -> along > 0)
                    .orElseThrow(() -> new SitingException(Message.of("siting.refused.glide-path-misses-profile",
                            Words.m(profile.firstM()), Words.m(profile.lastM()), Words.m(heightM))));
        } else {
            double steep = tan + riseOf(request);
            if (steep <= 0) {
                throw new SitingException(Message.of("siting.refused.glide-path-misses-slope"));
            }
            origin = heightM / steep;
        }
        return new GlidePathIntercept(origin, heightM - origin * tan, heightM, angleDeg, datum(request));
    }

    private static double groundM(SitingRequest request, double alongM) {
        if (request.runwayProfile().isEmpty()) {
            return riseOf(request) * alongM;
        }
        Profile profile = request.runwayProfile().get();
        if (!profile.covers(alongM)) {
            throw new SitingException(Message.of("siting.refused.runway-profile-end", Words.m(profile.firstM()), Words.m(profile.lastM()),
                    Words.m(alongM)));
        }
        return profile.heightAt(alongM);
    }

    private static double riseOf(SitingRequest request) {
        return request.number(Input.GROUND_SLOPE).orElse(0.0) / 100;
    }

    private static Datum datum(SitingRequest request) {
        return request.runwayProfile().isPresent() ? Datum.PROFILE
                : request.has(Input.GROUND_SLOPE) ? Datum.UNIFORM_SLOPE : Datum.LEVEL;
    }

    /** Returns the height of the path over the level of the threshold, so many metres before the threshold. */
    public double heightBeforeM(double beforeM) {
        return heightM + beforeM * Angles.tanDeg(angleDeg);
    }

    /** Returns where the path meets the runway and from what the height of the runway there is known, as a sentence. */
    public Message note() {
        return Message.of("siting.note.glide-path-" + datum.key(), Words.m(originM), Words.m(groundM), Words.m(heightM));
    }
}
