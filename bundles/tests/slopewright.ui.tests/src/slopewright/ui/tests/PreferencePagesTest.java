package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.jface.preference.IPreferencePage;
import org.eclipse.jface.preference.PreferenceDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.dialogs.PreferencesUtil;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.ui.preferences.Preferences;

/** The pages of the preferences with wrong input: it is said, what was typed stays, and nothing of it is kept. */
class PreferencePagesTest {

    @TempDir
    private Path folder;
    private PreferenceDialog dialog;

    @AfterEach
    void close() {
        dialog.close();
        Preferences.store().setToDefault(Preferences.SNAP_STEP_M);
        Preferences.store().setToDefault(Preferences.AUTOSAVE_MINUTES);
        Preferences.store().setToDefault(Preferences.LENGTH_UNIT);
    }

    private IPreferencePage open(String page) {
        dialog = PreferencesUtil.createPreferenceDialogOn(PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell(), page, null, null);
        dialog.setBlockOnOpen(false);
        dialog.open();
        return (IPreferencePage) dialog.getSelectedPage();
    }

    /** The fields of a page, in their order. */
    private Text field(IPreferencePage page, int index) {
        return Widgets.all((Composite) page.getControl(), Text.class).skip(index).findFirst().orElseThrow();
    }

    private static void type(Text field, String words) {
        field.setFocus();
        field.setText(words);
        field.notifyListeners(SWT.KeyUp, new Event());
        field.notifyListeners(SWT.FocusOut, new Event());
    }

    @Test
    void theFolderOfAnOwnRuleSetIsOne() throws Exception {
        IPreferencePage page = open("slopewright.ui.preferences");
        Text field = field(page, 0);
        Path file = Files.writeString(folder.resolve("file"), "");
        for (String typed : List.of("/nowhere/at/all", file.toString(), "relative")) {
            type(field, typed);
            assertEquals(typed + " is no folder.", page.getErrorMessage());
            assertEquals(typed, field.getText());
            assertTrue(!page.isValid());
        }
        type(field, folder.toString());
        assertEquals(folder + " holds no rule set: it has no rule-set.properties.", page.getErrorMessage());
        Files.writeString(folder.resolve("rule-set.properties"), "nonsense");
        type(field, folder + "/");
        assertTrue(page.getErrorMessage().contains("file") || page.getErrorMessage().contains("rule-set.properties"),
                page.getErrorMessage());
        type(field, "");
        assertEquals(null, page.getErrorMessage());
        assertTrue(page.isValid());
    }

    @Test
    void theStepOfPlacesIsALengthWithinItsLimits() {
        IPreferencePage page = open("slopewright.ui.preferences");
        Text field = field(page, 1);
        assertEquals("0.5", field.getText());
        for (String typed : List.of("", "abc", "NaN", "Infinity", "0", "-1", "1e9", "0.009", "100.01", "0x1p3", "2 kg", "1,234")) {
            type(field, typed);
            assertTrue(!page.isValid(), typed);
            assertTrue(page.getErrorMessage().contains("0.01") && page.getErrorMessage().contains("100"), page.getErrorMessage());
            assertEquals(typed, field.getText());
        }
        type(field, "0,25");
        assertTrue(page.isValid());
        assertTrue(page.performOk());
        assertEquals(0.25, Preferences.snapStepM());
    }

    /** 2 ft are 0.6096 m. */
    @Test
    void theStepFollowsTheChosenUnit() {
        Preferences.store().setValue(Preferences.LENGTH_UNIT, Preferences.FEET);
        IPreferencePage page = open("slopewright.ui.preferences");
        Text field = field(page, 1);
        assertEquals("1.64", field.getText());
        for (String typed : List.of("0.02", "328.1")) {
            type(field, typed);
            assertTrue(!page.isValid(), typed);
            assertTrue(page.getErrorMessage().contains("0.03 ft") && page.getErrorMessage().contains("328.08 ft"), page.getErrorMessage());
        }
        for (String typed : List.of("0.03", "328.08", "2")) {
            type(field, typed);
            assertTrue(page.isValid(), typed);
        }
        assertTrue(page.performOk());
        assertEquals(0.6096, Preferences.snapStepM(), 1e-9);
    }

    @Test
    void theMinutesAreWholeAndFew() {
        IPreferencePage page = open("slopewright.ui.preferences.window");
        Text field = field(page, 0);
        for (String typed : List.of("", "abc", "-1", "241", "2.5", "99999999999")) {
            type(field, typed);
            assertTrue(!page.isValid(), typed);
            assertTrue(page.getErrorMessage().contains("240"), page.getErrorMessage());
        }
        type(field, "15");
        assertTrue(page.performOk());
        assertEquals(15, Preferences.autosaveMinutes());
    }
}
