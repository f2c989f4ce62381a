package slopewright.ui.preferences;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

import org.eclipse.jface.preference.ComboFieldEditor;
import org.eclipse.jface.preference.DirectoryFieldEditor;
import org.eclipse.jface.preference.FieldEditorPreferencePage;
import org.eclipse.jface.preference.RadioGroupFieldEditor;
import org.eclipse.jface.preference.StringFieldEditor;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;

import slopewright.standards.OwnRuleSets;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;
import slopewright.standards.StandardsException;
import slopewright.ui.MessageTexts;
import slopewright.ui.units.Quantity;
import slopewright.ui.units.QuantityFormat;

/** The page on which the user chooses units, the rule set of new projects and the step of places in the plan. */
public final class PreferencePage extends FieldEditorPreferencePage implements IWorkbenchPreferencePage {

    private static final double LEAST_STEP_M = 0.01;
    private static final double GREATEST_STEP_M = 100;
    private static final int STEP_LETTERS = 8;
    private static final String HEAD = "rule-set.properties";

    /** Makes the page; the workbench does. */
    public PreferencePage() {
        super(GRID);
    }

    @Override
    public void init(IWorkbench workbench) {
        setPreferenceStore(Preferences.store());
        setDescription(Messages.get("units.hint"));
    }

    @Override
    protected void createFieldEditors() {
        addField(new RadioGroupFieldEditor(Preferences.LENGTH_UNIT, Messages.get("units.lengths"), 2,
                new String[][] {{Messages.get("units.metres"), Preferences.METRES}, {Messages.get("units.feet"), Preferences.FEET}},
                getFieldEditorParent(), true));
        addField(new RadioGroupFieldEditor(Preferences.ANGLE_FORM, Messages.get("units.angles"), 2,
                new String[][] {{Messages.get("units.decimal"), Preferences.DECIMAL}, {Messages.get("units.minutes"), Preferences.MINUTES}},
                getFieldEditorParent(), true));
        String[][] rules = RuleSets.all().stream().map(PreferencePage::entry).toArray(String[][]::new);
        addField(new ComboFieldEditor(Preferences.RULE_SET, Messages.get("units.rules"), rules, getFieldEditorParent()));
        addField(new OwnRulesEditor());
        addField(new StepEditor());
    }

    private static String[] entry(RuleSet rules) {
        return new String[] {MessageTexts.of(rules.descriptor().name()) + " (" + rules.edition() + ")", Preferences.nameOf(rules)};
    }

    /** The folder of an own rule set; one that is not sound is refused with file and line. */
    private final class OwnRulesEditor extends DirectoryFieldEditor {

        OwnRulesEditor() {
            super(Preferences.RULE_SET_FOLDER, Messages.get("units.own-rules"), getFieldEditorParent());
            setEmptyStringAllowed(true);
        }

        @Override
        protected boolean doCheckState() {
            String typed = getStringValue().strip();
            String wrong = typed.isEmpty() ? "" : wrong(typed);
            setErrorMessage(wrong);
            getTextControl().setToolTipText(wrong.isEmpty() ? null : wrong); // the page cuts what is too long for its head
            return wrong.isEmpty();
        }

        private static String wrong(String typed) {
            try {
                Path folder = Path.of(typed);
                if (!Files.isDirectory(folder)) {
                    return Messages.get("units.own-rules.no-folder", typed);
                }
                if (!Files.isRegularFile(folder.resolve(HEAD))) {
                    return Messages.get("units.own-rules.none", typed, HEAD);
                }
                OwnRuleSets.read(folder);
                return "";
            } catch (InvalidPathException e) {
                return Messages.get("units.own-rules.no-folder", typed);
            } catch (StandardsException e) {
                return MessageTexts.reason(e);
            }
        }
    }

    /** The step of places, in the unit of lengths, with its limits said where it is typed. */
    private final class StepEditor extends StringFieldEditor {

        StepEditor() {
            super(Preferences.SNAP_STEP_M, Messages.get("units.step", QuantityFormat.preferred().unit(Quantity.LENGTH)), STEP_LETTERS,
                    VALIDATE_ON_KEY_STROKE, getFieldEditorParent());
            setErrorMessage(Messages.get("units.step-range", format().showWithUnit(LEAST_STEP_M, Quantity.LENGTH),
                    format().showWithUnit(GREATEST_STEP_M, Quantity.LENGTH)));
            setEmptyStringAllowed(false);
        }

        private static QuantityFormat format() {
            return QuantityFormat.preferred();
        }

        /** What a limit is as it is shown, which is rounded. */
        private static double shown(double limitM) {
            return format().read(format().show(limitM, Quantity.LENGTH), Quantity.LENGTH);
        }

        @Override
        protected void doLoad() {
            show(Preferences.snapStepM());
        }

        @Override
        protected void doLoadDefault() {
            show(getPreferenceStore().getDefaultDouble(getPreferenceName()));
        }

        private void show(double stepM) {
            setStringValue(format().show(stepM, Quantity.LENGTH));
        }

        @Override
        protected boolean doCheckState() {
            try {
                double step = typed();
                return step >= shown(LEAST_STEP_M) && step <= shown(GREATEST_STEP_M);
            } catch (IllegalArgumentException e) {
                return false;
            }
        }

        private double typed() {
            return format().read(getStringValue(), Quantity.LENGTH);
        }

        @Override
        protected void doStore() {
            getPreferenceStore().setValue(getPreferenceName(), typed());
        }
    }
}
