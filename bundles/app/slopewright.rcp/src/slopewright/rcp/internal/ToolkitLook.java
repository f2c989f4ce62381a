package slopewright.rcp.internal;

import java.lang.reflect.Method;
import java.nio.charset.StandardCharsets;

import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;

/**
 * Has GTK draw what is selected in menus and fields, and what is the default, so that it is read: white on a blue that is deeper than the
 * desktop's. The toolkit says nothing about that in public, so it is asked by name; on other systems, and where a later toolkit answers no
 * longer, the look stays that of the desktop. It is not told to be dark with the window: labels would keep the white of the dark in the
 * light.
 */
final class ToolkitLook {
    private static final String INTERNAL = "org.eclipse.swt.internal.";
    private static final int APPLICATION = 600;
    private static final String SELECTED = """
            entry selection, textview text selection, label selection, menuitem:hover, menuitem:selected, menubar > menuitem:hover
            { background-color: #1a5fb4; color: #ffffff; }
            button.default, button.suggested-action { background-image: none; background-color: #1a5fb4; color: #ffffff; }
            menuitem accelerator { color: alpha(currentColor, 0.8); }
            menuitem:hover > label, menuitem:hover > box > label, menuitem:hover > accelerator, menuitem:hover > box > accelerator,
            menuitem:hover > label > accelerator, menuitem:hover > box > label > accelerator { color: #ffffff; }
            """;

    private ToolkitLook() {
    }

    /** Deepens the colour of what is selected; once for a display. */
    static void selections() {
        ask(() -> {
            Class<?> gtk = toolkit("gtk.GTK");
            Class<?> gtk3 = toolkit("gtk3.GTK3");
            long provider = (long) gtk.getMethod("gtk_css_provider_new").invoke(null);
            byte[] sheet = (SELECTED + '\0').getBytes(StandardCharsets.UTF_8);
            Method load = gtk3.getMethod("gtk_css_provider_load_from_data", long.class, byte[].class, long.class, long[].class);
            load.invoke(null, provider, sheet, -1L, null);
            long screen = (long) toolkit("gtk.GDK").getMethod("gdk_screen_get_default").invoke(null);
            gtk3.getMethod("gtk_style_context_add_provider_for_screen", long.class, long.class, int.class)
                    .invoke(null, screen, provider, APPLICATION);
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
