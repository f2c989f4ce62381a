package slopewright.checks;

import java.util.Locale;

/** How much a finding weighs, from least to most. */
public enum Severity {
    /** Worth knowing. */
    NOTE,
    /** To be cleared up before submission. */
    WARNING,
    /** The layout breaks a rule. */
    FAIL;

    /** Returns the word used in files, options and output. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
