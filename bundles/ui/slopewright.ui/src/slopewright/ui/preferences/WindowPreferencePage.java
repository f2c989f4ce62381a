package slopewright.ui.preferences;

import org.eclipse.jface.preference.BooleanFieldEditor;
import org.eclipse.jface.preference.FieldEditorPreferencePage;
import org.eclipse.jface.preference.IntegerFieldEditor;
import org.eclipse.jface.preference.RadioGroupFieldEditor;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;

/** The page on which the user chooses the look and the language of the window, and how work is kept safe. */
public final class WindowPreferencePage extends FieldEditorPreferencePage implements IWorkbenchPreferencePage {

    private static final int MOST_MINUTES = 240;

    /** Makes the page; the workbench does. */
    public WindowPreferencePage() {
        super(GRID);
    }

    @Override
    public void init(IWorkbench workbench) {
        setPreferenceStore(Preferences.store());
        setDescription(Messages.get("window.hint"));
    }

    @Override
    protected void createFieldEditors() {
        addField(new RadioGroupFieldEditor(Preferences.THEME, Messages.get("window.theme"), 3,
                new String[][] {{Messages.get("window.light"), Preferences.LIGHT}, {Messages.get("window.dark"), Preferences.DARK},
                        {Messages.get("window.desktop"), Preferences.DESKTOP}},
                getFieldEditorParent(), true));
        addField(new RadioGroupFieldEditor(Preferences.LANGUAGE, Messages.get("window.language"), 3,
                new String[][] {{"&English", "en"}, {"&Deutsch", "de"}, {Messages.get("window.desktop-language"), ""}},
                getFieldEditorParent(), true));
        addField(new BooleanFieldEditor(Preferences.KEEP_RECOVERY, Messages.get("window.recovery"), getFieldEditorParent()));
        IntegerFieldEditor minutes = new IntegerFieldEditor(Preferences.AUTOSAVE_MINUTES, Messages.get("window.autosave"),
                getFieldEditorParent());
        minutes.setValidRange(0, MOST_MINUTES);
        minutes.setErrorMessage(Messages.get("window.autosave-range", MOST_MINUTES));
        addField(minutes);
    }
}
