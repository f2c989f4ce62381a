package slopewright.checks.internal.glidepath;

import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.Stop;
import slopewright.messages.Message;
import slopewright.model.GlidePathAid;
import slopewright.siting.Input;

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

    /** Returns its origin beyond the threshold, metres; ends the rule where it is not known. */
    static double originM(AidFacts facts) {
        return AidFacts.need(facts.request().number(Input.GLIDE_PATH_ORIGIN).orElse(null), Message.of("missing.glide-path-origin"));
    }
}
