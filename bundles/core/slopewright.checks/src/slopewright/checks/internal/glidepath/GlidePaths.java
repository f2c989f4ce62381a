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

    /** Returns where it meets the runway profile; ends the rule where that is not known. */
    static GlidePathIntercept intercept(AidFacts facts) {
        if (of(facts).getOriginAlongM() == null) {
            AidFacts.need(of(facts).getPathAngleDeg(), Message.of("missing.glide-path-origin"));
        }
        Attempt<Optional<GlidePathIntercept>> found = Attempt.of(() -> GlidePathIntercept.of(facts.request(), facts.laid().slopeDeg()));
        Optional<GlidePathIntercept> intercept = found.value().orElseThrow(() -> Stop.unsolved(found.reason().orElseThrow()));
        return AidFacts.need(intercept.orElse(null), Message.of("missing.glide-path-origin"));
    }
}
