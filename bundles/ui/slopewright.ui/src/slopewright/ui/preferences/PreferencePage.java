package slopewright.ui.preferences;

import org.eclipse.jface.preference.ComboFieldEditor;
import org.eclipse.jface.preference.FieldEditorPreferencePage;
import org.eclipse.jface.preference.RadioGroupFieldEditor;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;

import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** The page on which the user chooses units and the rule set of new projects. */
public final class PreferencePage extends FieldEditorPreferencePage implements IWorkbenchPreferencePage {

    /** Makes the page; the workbench does. */
    public PreferencePage() {
        super(GRID);
    }

    @Override
    public void init(IWorkbench workbench) {
        setPreferenceStore(Preferences.store());
        setDescription("Units change what is shown and typed. Projects always keep metres and degrees.");
    }

    @Override
    protected void createFieldEditors() {
        addField(new RadioGroupFieldEditor(Preferences.LENGTH_UNIT, "Lengths and heights", 2,
                new String[][] {{"&Metres", Preferences.METRES}, {"&Feet", Preferences.FEET}}, getFieldEditorParent(), true));
        addField(new RadioGroupFieldEditor(Preferences.ANGLE_FORM, "Angles", 2,
                new String[][] {{"&Decimal degrees", Preferences.DECIMAL}, {"Degrees and m&inutes", Preferences.MINUTES}},
                getFieldEditorParent(), true));
        String[][] rules = RuleSets.all().stream().map(PreferencePage::entry).toArray(String[][]::new);
        addField(new ComboFieldEditor(Preferences.RULE_SET, "&Rule set of new projects", rules, getFieldEditorParent()));
    }

    private static String[] entry(RuleSet rules) {
        return new String[] {rules.descriptor().name() + " (" + rules.edition() + ")", Preferences.nameOf(rules)};
    }
}
