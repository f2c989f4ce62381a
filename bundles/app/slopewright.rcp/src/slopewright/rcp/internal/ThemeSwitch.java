package slopewright.rcp.internal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;

import org.eclipse.core.runtime.ILog;
import org.eclipse.e4.ui.css.swt.theme.ITheme;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.jface.util.IPropertyChangeListener;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbench;

import slopewright.model.io.AtomicFile;
import slopewright.ui.preferences.Preferences;
import slopewright.ui.theme.ScreenTheme;
import slopewright.ui.theme.Selections;

/** Gives the window the look that the user prefers, at the start and when the preference changes, and tells what paints its own colours. */
@SuppressWarnings("restriction") // the theme engine is the platform's own way to change the look of an open window
public final class ThemeSwitch {

    private static final String LIGHT_THEME = "org.eclipse.e4.ui.css.theme.e4_default";
    private static final String DARK_THEME = "org.eclipse.e4.ui.css.theme.e4_dark";

    private ThemeSwitch() {
    }

    /**
     * Follows the preference from now on.
     *
     * @param workbench the workbench that is about to open its windows
     */
    public static void follow(IWorkbench workbench) {
        ToolkitLook look = new ToolkitLook();
        IPropertyChangeListener listener = event -> {
            if (Preferences.THEME.equals(event.getProperty())) {
                apply(workbench, look);
            } else if (Preferences.LANGUAGE.equals(event.getProperty())) {
                keepLanguage();
                workbench.getDisplay().asyncExec(() -> FreshStart.offer(workbench));
            }
        };
        Preferences.store().addPropertyChangeListener(listener);
        Selections.follow(workbench.getDisplay());
        apply(workbench, look);
    }

    /** Returns whether the window shall be dark: as the user says, else as the desktop says. */
    public static boolean wantsDark() {
        return switch (Preferences.theme()) {
            case Preferences.DARK -> true;
            case Preferences.LIGHT -> false;
            default -> Display.isSystemDarkTheme();
        };
    }

    /** Turns the look of the window over and keeps it as the preference. */
    public static void toggle() {
        Preferences.store().setValue(Preferences.THEME, ScreenTheme.isDark() ? Preferences.LIGHT : Preferences.DARK);
    }

    /** Notes the language where the start script looks for it, since it is fixed before the preferences can be read. */
    private static void keepLanguage() {
        try {
            AtomicFile.replace(ShellCommands.folder("language"),
                    Preferences.store().getString(Preferences.LANGUAGE).getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            ILog.get().warn("The language of the next start cannot be kept", e);
        }
    }

    private static void apply(IWorkbench workbench, ToolkitLook look) {
        boolean dark = wantsDark();
        look.menus(dark);
        IThemeEngine engine = workbench.getService(IThemeEngine.class);
        if (engine != null) {
            String wanted = dark ? DARK_THEME : LIGHT_THEME;
            ITheme active = engine.getActiveTheme();
            if (active == null || !wanted.equals(active.getId())) {
                engine.setTheme(wanted, true);
            }
        }
        ScreenTheme.setDark(dark);
    }
}
