package slopewright.report.internal.chapters;

import slopewright.checks.Outcome;
import slopewright.checks.Severity;
import slopewright.checks.Standing;
import slopewright.checks.Verdict;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.report.internal.html.Html;

/**
 * What a report comes to, the first that holds: nothing was evaluated, not met, to clear up, met.
 *
 * @param style    how it looks: {@code broken}, {@code open} or {@code clear}
 * @param sentence what it says
 */
record Conclusion(String style, Message sentence) {

    /** Draws the conclusion. */
    static Conclusion of(ReportSource source) {
        Standing standing = Standing.of(source.result());
        if (!standing.evaluated()) {
            return new Conclusion("broken", Message.of("report.conclusion.nothing"));
        }
        int notMet = standing.notMet();
        int toClearUp = standing.toClearUp();
        if (notMet > 0) {
            long grave = source.result().outcomes().stream().filter(outcome -> outcome.verdict() == Verdict.NOT_MET)
                    .map(Outcome::severity).filter(severity -> severity == Severity.FAIL).count();
            return new Conclusion(grave > 0 ? "broken" : "open", Message.of("report.conclusion.not-met", Words.count(notMet),
                    Words.count(grave), Words.count(toClearUp)));
        }
        if (toClearUp > 0) {
            return new Conclusion("open", Message.of("report.conclusion.to-clear-up", Words.count(toClearUp)));
        }
        return new Conclusion("clear", Message.of("report.conclusion.met"));
    }

    /** Adds it to a document. */
    void write(Html html) {
        html.element("p class=\"locked verdict " + style + "\"", html.words().render(sentence));
    }
}
