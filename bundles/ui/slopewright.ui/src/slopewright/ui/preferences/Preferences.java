package slopewright.ui.preferences;

import org.eclipse.jface.preference.IPreferenceStore;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.ui.preferences.ScopedPreferenceStore;

import slopewright.checks.ProjectRules;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** The preferences of the user. They change what is shown and what new projects begin with, never what a project holds. */
public final class Preferences {

    /** Key of the unit of lengths: {@code m} or {@code ft}. */
    public static final String LENGTH_UNIT = "lengthUnit";

    /** Key of the form of angles: {@code decimal} or {@code minutes}. */
    public static final String ANGLE_FORM = "angleForm";

    /** Key of the name of the rule set of new projects. */
    public static final String RULE_SET = "ruleSet";

    /** Value of {@link #LENGTH_UNIT} for feet. */
    public static final String FEET = "ft";

    /** Value of {@link #LENGTH_UNIT} for metres. */
    public static final String METRES = "m";

    /** Value of {@link #ANGLE_FORM} for decimal degrees. */
    public static final String DECIMAL = "decimal";

    /** Value of {@link #ANGLE_FORM} for degrees and minutes. */
    public static final String MINUTES = "minutes";

    private Preferences() {
    }

    /** Returns the store, with its defaults. */
    public static IPreferenceStore store() {
        IPreferenceStore store = new ScopedPreferenceStore(InstanceScope.INSTANCE, "slopewright.ui");
        store.setDefault(LENGTH_UNIT, METRES);
        store.setDefault(ANGLE_FORM, DECIMAL);
        store.setDefault(RULE_SET, ProjectRules.DEFAULT);
        return store;
    }

    /** Returns whether lengths are shown and typed in feet. */
    public static boolean isFeet() {
        return FEET.equals(store().getString(LENGTH_UNIT));
    }

    /** Returns whether angles are shown and typed in degrees and minutes. */
    public static boolean isMinutes() {
        return MINUTES.equals(store().getString(ANGLE_FORM));
    }

    /** Returns the shortest name under which a rule set is found: its key, and its edition where that is not the usual one. */
    public static String nameOf(RuleSet rules) {
        boolean isUsual = RuleSets.find(rules.key()).filter(one -> one.edition().equals(rules.edition())).isPresent();
        return isUsual ? rules.key() : rules.key() + ":" + rules.edition();
    }

    /** Returns the name of the rule set that new projects begin with; one that is known. */
    public static String ruleSet() {
        String name = store().getString(RULE_SET);
        return RuleSets.find(name).isPresent() ? name : ProjectRules.DEFAULT;
    }
}
