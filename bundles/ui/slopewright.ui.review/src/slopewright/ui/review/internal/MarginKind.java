package slopewright.ui.review.internal;

import java.util.Locale;

import slopewright.checks.Outcome;

/** What a margin is kept to. */
public enum MarginKind {

    /** The obstacle surface. */
    OBSTACLE("OBS-01"),
    /** The wheel clearance that is needed. */
    WHEELS("WHEEL-"),
    /** The eye height that is needed. */
    EYE("EYE-");

    private final String rules;

    MarginKind(String rules) {
        this.rules = rules;
    }

    /** Returns whether an outcome measures it, in metres. */
    public boolean isMeasuredBy(Outcome outcome) {
        return outcome.rule().startsWith(rules) && outcome.unit().equals("m");
    }

    /** Returns its name for people. */
    public String label() {
        return Messages.get("comparison.margin." + name().toLowerCase(Locale.ROOT));
    }
}
