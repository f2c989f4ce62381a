package slopewright.ui.preferences;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.preference.IPreferenceStore;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.preferences.ScopedPreferenceStore;
import org.osgi.service.prefs.BackingStoreException;

import slopewright.evaluation.ProjectRules;
import slopewright.model.Project;
import slopewright.standards.OwnRuleSets;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;
import slopewright.standards.StandardsException;

/** The preferences of the user. They change what is shown and what new projects begin with, never what a project holds. */
public final class Preferences {

    /** Key of the unit of lengths: {@code m} or {@code ft}. */
    public static final String LENGTH_UNIT = "lengthUnit";

    /** Key of the form of angles: {@code decimal} or {@code minutes}. */
    public static final String ANGLE_FORM = "angleForm";

    /** Key of the name of the rule set of new projects. */
    public static final String RULE_SET = "ruleSet";

    /** Key of the folder of an organisation's own rule set, which new projects begin with instead; empty for none. */
    public static final String RULE_SET_FOLDER = "ruleSetFolder";

    /** Key of the look of the window: {@code light}, {@code dark} or {@code desktop}. */
    public static final String THEME = "theme";

    /** Key of the language of the window: {@code en}, {@code de}, or empty for that of the desktop; of effect from the next start. */
    public static final String LANGUAGE = "language";

    /** Key of whether unsaved work is kept beside the project against a crash. */
    public static final String KEEP_RECOVERY = "keepRecovery";

    /** Key of how often an open project is saved by itself, minutes; 0 for never. */
    public static final String AUTOSAVE_MINUTES = "autosaveMinutes";

    /** Key of the step to which the plan rounds places, metres. */
    public static final String SNAP_STEP_M = "snapStepM";

    /** Key of how much each criterion of the comparison counts, such as {@code rules=3,load=0}; empty where all count alike. */
    public static final String COMPARISON_WEIGHTS = "comparisonWeights";

    /** Value of {@link #THEME} for dark on light. */
    public static final String LIGHT = "light";

    /** Value of {@link #THEME} for light on dark. */
    public static final String DARK = "dark";

    /** Value of {@link #THEME} for what the desktop says. */
    public static final String DESKTOP = "desktop";

    /** Value of {@link #LENGTH_UNIT} for feet. */
    public static final String FEET = "ft";

    /** Value of {@link #LENGTH_UNIT} for metres. */
    public static final String METRES = "m";

    /** Value of {@link #ANGLE_FORM} for decimal degrees. */
    public static final String DECIMAL = "decimal";

    /** Value of {@link #ANGLE_FORM} for degrees and minutes. */
    public static final String MINUTES = "minutes";

    private static final String NODE = "slopewright.ui";
    private static final double USUAL_SNAP_STEP_M = 0.5;

    private Preferences() {
    }

    /** Returns the store, with its defaults. */
    public static IPreferenceStore store() {
        IPreferenceStore store = new ScopedPreferenceStore(InstanceScope.INSTANCE, NODE);
        store.setDefault(LENGTH_UNIT, METRES);
        store.setDefault(ANGLE_FORM, MINUTES);
        store.setDefault(RULE_SET, RuleSets.names().stream().filter(name -> name.startsWith(ProjectRules.DEFAULT + ":")).findFirst()
                .orElseThrow());
        store.setDefault(RULE_SET_FOLDER, "");
        store.setDefault(THEME, DESKTOP);
        store.setDefault(LANGUAGE, "");
        store.setDefault(KEEP_RECOVERY, true);
        store.setDefault(AUTOSAVE_MINUTES, 0);
        store.setDefault(SNAP_STEP_M, USUAL_SNAP_STEP_M);
        store.setDefault(COMPARISON_WEIGHTS, "");
        return store;
    }

    /** Writes each preference to the disk as soon as it changes, from now on, so that none is lost however the program ends. */
    public static void writeAtOnce() {
        IEclipsePreferences node = InstanceScope.INSTANCE.getNode(NODE);
        node.addPreferenceChangeListener(event -> Display.getDefault().asyncExec(() -> {
            try {
                node.flush();
            } catch (BackingStoreException e) {
                ILog.get().warn("The preferences cannot be written", e);
            }
        }));
    }

    /** Returns whether lengths are shown and typed in feet. */
    public static boolean isFeet() {
        return FEET.equals(InstanceScope.INSTANCE.getNode(NODE).get(LENGTH_UNIT, METRES));
    }

    /** Returns whether angles are shown and typed in degrees and minutes. */
    public static boolean isMinutes() {
        return MINUTES.equals(InstanceScope.INSTANCE.getNode(NODE).get(ANGLE_FORM, MINUTES));
    }

    /** Returns the name under which a rule set is kept in a project: its key and its edition. */
    public static String nameOf(RuleSet rules) {
        return rules.key() + ":" + rules.edition();
    }

    /** Returns the name of the rule set that new projects begin with; one that is known. */
    public static String ruleSet() {
        RuleSet usual = RuleSets.find(ProjectRules.DEFAULT).orElseThrow();
        return nameOf(RuleSets.find(store().getString(RULE_SET)).orElse(usual));
    }

    /**
     * Returns the organisation's own rule set, empty where no folder is named.
     *
     * @throws StandardsException where the folder holds none that is sound; the message names file, line and reason
     */
    public static Optional<RuleSet> ownRuleSet() {
        String folder = store().getString(RULE_SET_FOLDER);
        return folder.isBlank() ? Optional.empty() : Optional.of(OwnRuleSets.read(Path.of(folder)));
    }

    /**
     * Gives a new project the rule set that new projects begin with: the organisation's own, with its folder, where one is named and
     * sound, else a shipped one.
     */
    public static void begin(Project project) {
        project.setRuleSetKey(ruleSet());
        try {
            ownRuleSet().ifPresent(own -> {
                project.setRuleSetKey(nameOf(own));
                project.setRuleSetFolder(Path.of(store().getString(RULE_SET_FOLDER)).toAbsolutePath().normalize().toString());
            });
        } catch (StandardsException | InvalidPathException e) {
            // the page of preferences says what is wrong with it; the project begins with the shipped one, which its report names
            project.setRuleSetFolder(null);
        }
    }

    /** Returns which look the window has: {@link #LIGHT}, {@link #DARK} or {@link #DESKTOP}. */
    public static String theme() {
        String theme = store().getString(THEME);
        return LIGHT.equals(theme) || DARK.equals(theme) ? theme : DESKTOP;
    }

    /** Returns whether unsaved work is kept beside the project against a crash. */
    public static boolean keepsRecovery() {
        return store().getBoolean(KEEP_RECOVERY);
    }

    /** Returns after how many minutes an open project is saved by itself; 0 where it is not. */
    public static int autosaveMinutes() {
        return Math.max(0, store().getInt(AUTOSAVE_MINUTES));
    }

    /** Returns the step to which the plan rounds places, metres; more than 0. */
    public static double snapStepM() {
        double step = store().getDouble(SNAP_STEP_M);
        return step > 0 && Double.isFinite(step) ? step : USUAL_SNAP_STEP_M;
    }
}
