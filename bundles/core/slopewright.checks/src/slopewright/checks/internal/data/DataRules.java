package slopewright.checks.internal.data;

import slopewright.checks.internal.Stop;
import slopewright.messages.Message;

/** What the rules about contradictory data share. */
final class DataRules {
    private DataRules() {
    }

    /** Returns the end of a rule that finds no second entry to compare the first with. */
    static Stop nothingToCompare() {
        return Stop.notApplicable(Message.of("data.nothing-to-compare"));
    }
}
