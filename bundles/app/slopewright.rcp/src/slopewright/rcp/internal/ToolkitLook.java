package slopewright.rcp.internal;

import java.lang.reflect.Method;
import java.nio.charset.StandardCharsets;

import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;

/**
 * Has GTK draw menus as light or dark as the window, and what is selected in menus and fields, and what is the default, so that it is read:
 * white on a blue that is deeper than the desktop's. The toolkit says nothing about that in public, so it is asked by name; on other
 * systems, and where a later toolkit answers no longer, the look stays that of the desktop. GTK as a whole is not told to be dark: labels
 * would keep the white of the dark in the light. Menus and the words of empty fields alone get colours of their own, which come and go with
 * the theme.
 */
final class ToolkitLook {
    private static final String INTERNAL = "org.eclipse.swt.internal.";
    /** Above what the toolkit gives a single list (600), below what the user says of the desktop (800). */
    private static final int PRIORITY = 700;
    private static final String SELECTED = """
            entry selection, textview text selection, label selection, menuitem:hover, menuitem:selected, menubar > menuitem:hover
            { background-color: #1a5fb4; color: #ffffff; }
            button.default:not(:disabled), button.suggested-action:not(:disabled)
            { background-image: none; background-color: #1a5fb4; color: #ffffff; }
            menuitem accelerator { color: alpha(currentColor, 0.8); }
            menuitem:hover > label, menuitem:hover > box > label, menuitem:hover > accelerator, menuitem:hover > box > accelerator,
            menuitem:hover > label > accelerator, menuitem:hover > box > label > accelerator { color: #ffffff; }
            """;
    /** What an empty field says of itself is fainter than what is typed, and still read; selected rows are pale, and deep in the dark. */
    private static final String LIGHT_FIELDS = """
            @define-color placeholder_text_color #666666;
            treeview.view:selected, treeview.view:selected:focus { background-color: #bfdbf9; color: #000000; }
            """;
    private static final String DARK_FIELDS = """
            @define-color placeholder_text_color #b8b8b8;
            treeview.view:selected, treeview.view:selected:focus { background-color: #153a66; color: #eeeeee; }
            """;
    private static final String DARK_MENUS = """
            menubar, menu, .menu { background-color: #2f2f2f; background-image: none; color: #eeeeee; }
            menuitem { color: #eeeeee; }
            menuitem:disabled, menuitem:disabled label, menuitem:disabled accelerator { color: #9a9a9a; }
            menu separator { background-color: #5a5a5a; }
            """;

    /** What is switched off stands back, and is still read. */
    private static final String OFF = """
            button:disabled, button:disabled label, label:disabled, checkbutton:disabled, radiobutton:disabled, entry:disabled
            { color: %s; }
            """;
    private static final String LIGHT_OFF = OFF.formatted("#7a7a7a");
    private static final String DARK_OFF = OFF.formatted("#a0a0a0") + """
            button:disabled, entry:disabled { border-color: #6a6a6a; box-shadow: none; }
            toolbar button:disabled { border-color: transparent; }
            toolbar button:disabled image { opacity: 0.35; }
            """;

    private long provider;

    /** Gives the display the colours of what is selected; once for a display. */
    ToolkitLook() {
        ask(() -> {
            provider = (long) toolkit("gtk.GTK").getMethod("gtk_css_provider_new").invoke(null);
            long screen = (long) toolkit("gtk.GDK").getMethod("gdk_screen_get_default").invoke(null);
            toolkit("gtk3.GTK3").getMethod("gtk_style_context_add_provider_for_screen", long.class, long.class, int.class)
                    .invoke(null, screen, provider, PRIORITY);
        });
    }

    /** Has menus be light as those of the desktop, or dark. */
    void menus(boolean isDark) {
        ask(() -> {
            if (provider != 0) {
                String theme = isDark ? DARK_FIELDS + DARK_MENUS + DARK_OFF : LIGHT_FIELDS + LIGHT_OFF;
                byte[] sheet = (theme + SELECTED + '\0').getBytes(StandardCharsets.UTF_8);
                Method load = toolkit("gtk3.GTK3").getMethod("gtk_css_provider_load_from_data", long.class, byte[].class, long.class,
                        long[].class);
                load.invoke(null, provider, sheet, -1L, null);
            }
        });
    }

    private interface Question {
        void ask() throws ReflectiveOperationException;
    }

    private static void ask(Question question) {
        if (!"gtk".equals(SWT.getPlatform())) {
            return;
        }
        try {
            question.ask();
        } catch (ReflectiveOperationException e) {
            ILog.get().warn("The toolkit keeps the look of the desktop", e);
        }
    }

    private static Class<?> toolkit(String name) throws ClassNotFoundException {
        return Class.forName(INTERNAL + name, true, Display.class.getClassLoader());
    }
}
