package slopewright.checks.internal.glidepath;

import java.util.Optional;

import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.Stop;
import slopewright.evaluation.Attempt;
import slopewright.messages.Message;
import slopewright.model.GlidePathAid;
import slopewright.siting.GlidePathIntercept;

/** What the rules beside a glide path share. */
final class GlidePaths {
    private GlidePaths() {
    }

    /** Returns the glide path; ends the rule where there is none. */
    static GlidePathAid of(AidFacts facts) {
        GlidePathAid path = facts.host().getGlidePath();
        if (path == null) {
            throw Stop.notApplicable(Message.of("glidepath.none"));
        }
        return path;
    }

    /** Returns the glide path of a runway; ends the rule at a helipad or where there is none. */
    static GlidePathAid atRunway(AidFacts facts) {
        facts.end();
        return of(facts);
    }

    /** Returns how far from the threshold it meets the runway; ends the rule where that is not known. */
    static double originM(AidFacts facts) {
        return known(facts, of(facts).getOriginAlongM() != null).originM();
    }

    /** Returns the path with its height over the threshold; ends the rule where that is not known. */
    static GlidePathIntercept overThreshold(AidFacts facts) {
        return known(facts, of(facts).getOriginAlongM() == null);
    }

    /** A place that was entered is known; one that follows from the other by the level of the runway only where that is. */
    private static GlidePathIntercept known(AidFacts facts, boolean entered) {
        GlidePathIntercept found = intercept(facts);
        if (!entered && found.datum() == GlidePathIntercept.Datum.LEVEL) {
            throw Stop.missing(Message.of("missing.profile-to-glide-path"));
        }
        return found;
    }

    private static GlidePathIntercept intercept(AidFacts facts) {
        if (of(facts).getOriginAlongM() == null) {
            AidFacts.need(of(facts).getPathAngleDeg(), Message.of("missing.glide-path-origin"));
        }
        Attempt<Optional<GlidePathIntercept>> found = Attempt.of(() -> GlidePathIntercept.of(facts.request(), facts.laid().slopeDeg()));
        Optional<GlidePathIntercept> intercept = found.value().orElseThrow(() -> Stop.unsolved(found.reason().orElseThrow()));
        return AidFacts.need(intercept.orElse(null), Message.of("missing.glide-path-origin"));
    }
}
