package slopewright.ui.review.internal;

import java.util.Locale;
import java.util.function.Predicate;

import slopewright.checks.Outcome;
import slopewright.checks.Result;
import slopewright.checks.Verdict;

/** Which outcomes are shown. */
public enum OutcomeFilter {

    /** What is not met, and what is to be cleared up. */
    FINDINGS(outcome -> outcome.verdict() == Verdict.NOT_MET || outcome.verdict() == Verdict.TO_CLEAR_UP),
    /** Rules that are not met. */
    NOT_MET(outcome -> outcome.verdict() == Verdict.NOT_MET),
    /** Missing inputs, and values that nobody confirmed. */
    TO_CLEAR_UP(outcome -> outcome.verdict() == Verdict.TO_CLEAR_UP),
    /** Of these the rules that lack an input. */
    NOT_EVALUATED(outcome -> outcome.result() == Result.NOT_EVALUATED),
    /** Rules that are met. */
    MET(outcome -> outcome.verdict() == Verdict.MET),
    /** Everything, what does not apply too. */
    ALL(outcome -> true);

    private final Predicate<Outcome> shown;

    OutcomeFilter(Predicate<Outcome> shown) {
        this.shown = shown;
    }

    /** Returns its name for people. */
    public String label() {
        return Messages.get("findings.show." + name().toLowerCase(Locale.ROOT));
    }

    /** Returns whether it shows an outcome. */
    public boolean shows(Outcome outcome) {
        return shown.test(outcome);
    }
}
