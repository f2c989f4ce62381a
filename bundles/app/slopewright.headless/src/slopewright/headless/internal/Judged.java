package slopewright.headless.internal;

import java.util.List;

import slopewright.checks.Checks;
import slopewright.checks.PlaceStanding;
import slopewright.checks.Standing;
import slopewright.checks.Verdict;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.MadeFrom;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.model.ApproachAid;

/**
 * What the figures of a project that leave the program take along: where they come from and what the check says of them. Whoever gets a
 * table or a map need not have seen the report.
 *
 * @param made     what they were made from, with the verdict
 * @param standing how the project stands
 */
record Judged(MadeFrom made, Standing standing) {

    /** Checks a project as it was evaluated. */
    static Judged of(ProjectEvaluation evaluation) {
        Standing standing = Standing.of(Checks.run(evaluation, rule -> true));
        return new Judged(MadeFrom.of(evaluation).judged(standing.words()), standing);
    }

    /** Checks a project as it was evaluated; the verdict is that of all that concerns one aid of it. */
    static Judged of(ProjectEvaluation evaluation, ApproachAid which) {
        AidEvaluation aid = evaluation.aid(which);
        Standing standing = Standing.of(List.of(aid), Checks.run(evaluation, rule -> true));
        return new Judged(MadeFrom.of(aid.project(), aid.rules()).judged(standing.words()), standing);
    }

    /** Checks a project as it was evaluated; the verdict is that of a place in it, whatever stands there. */
    static Judged of(ProjectEvaluation evaluation, PlaceStanding place) {
        return new Judged(MadeFrom.of(evaluation).judged(place.standing().words()), place.standing());
    }

    /** Says what stands against the figures that were written; nothing where all is met. */
    void tell(Streams streams, String command) {
        warn(streams, command, "verdict of the check, which the file carries");
    }

    /** Says what stands against the figures of an aid that are shown; nothing where all is met. */
    void tellOfAid(Streams streams, String command) {
        warn(streams, command, "verdict of the check on the aid as it stands, on which these figures rest");
    }

    /** Says what stands against the place at which something was solved; nothing where all is met. */
    void tellOfPlace(Streams streams, String command) {
        warn(streams, command, "verdict of the check on the place, on which these figures rest");
    }

    private void warn(Streams streams, String command, String what) {
        if (standing.verdict() != Verdict.MET) {
            streams.warn("slopewright " + command + ": " + what + ": " + standing.words().english());
        }
    }
}
