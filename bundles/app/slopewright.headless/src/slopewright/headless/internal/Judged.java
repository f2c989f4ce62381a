package slopewright.headless.internal;

import slopewright.checks.Checks;
import slopewright.checks.Standing;
import slopewright.checks.Verdict;
import slopewright.evaluation.MadeFrom;
import slopewright.evaluation.ProjectEvaluation;

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

    /** Says what stands against the figures that were written; nothing where all is met. */
    void tell(Streams streams, String command) {
        if (standing.verdict() != Verdict.MET) {
            streams.warn("slopewright " + command + ": verdict of the check, which the file carries: " + standing.words().english());
        }
    }
}
