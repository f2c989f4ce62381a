package slopewright.ui.review.internal;

import java.util.Map;

import slopewright.checks.compare.Criterion;
import slopewright.ui.preferences.Preferences;

/** How much each criterion counts, as it was chosen last: the comparison shows it, and the report that is handed over weighs by it. */
public final class ComparisonWeights {

    private ComparisonWeights() {
    }

    /** Returns the weights; alike where none were chosen or they are not understood. */
    public static Map<Criterion, Integer> kept() {
        try {
            return Criterion.weights(Preferences.store().getString(Preferences.COMPARISON_WEIGHTS));
        } catch (IllegalArgumentException e) {
            // what a hand wrote into the settings is no reason to show nothing
            return Criterion.alike();
        }
    }

    /** Keeps weights. */
    static void keep(Map<Criterion, Integer> weights) {
        Preferences.store().setValue(Preferences.COMPARISON_WEIGHTS, Criterion.text(weights));
    }
}
