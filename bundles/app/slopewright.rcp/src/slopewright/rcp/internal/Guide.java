package slopewright.rcp.internal;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

import org.eclipse.core.runtime.FileLocator;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.preference.PreferenceDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;

/**
 * The guide: pages that lie in this bundle and are shown by the browser of the system. Nothing of it is read before it is asked for. The
 * page about the window has a place for each view, dialog and wizard, named by its class.
 */
public final class Guide {

    private static final String FOLDER = "docs/guide/";
    private static final String WINDOW = "window.html";
    private static final String CONTENTS = "index.html";

    private Guide() {
    }

    /**
     * Returns the address of the page about what is before the user: the dialog that is open, else the view that has the focus.
     *
     * @param shell the shell that has the focus, null where none has
     * @throws IOException where the pages cannot be laid out for the browser
     */
    public static String address(Shell shell) throws IOException {
        return address(subject(shell));
    }

    /**
     * Returns the address of the page about something of the window.
     *
     * @param subject a view, editor, dialog, wizard or page of preferences, null for none
     * @throws IOException where the pages cannot be laid out for the browser
     */
    public static String address(Object subject) throws IOException {
        String language = Locale.getDefault().getLanguage().equals(Locale.GERMAN.getLanguage()) ? "de" : "en";
        URL folder = Platform.getBundle("slopewright.rcp").getEntry(FOLDER);
        String here = FileLocator.toFileURL(folder).toExternalForm() + language + "/";
        String about = page(here + WINDOW);
        for (Class<?> type = subject == null ? Object.class : subject.getClass(); type != Object.class; type = type.getSuperclass()) {
            if (about.contains(" id=\"" + type.getSimpleName() + "\"")) {
                return here + WINDOW + "#" + type.getSimpleName();
            }
        }
        return here + CONTENTS;
    }

    private static String page(String address) throws IOException {
        try (InputStream in = new URL(address).openStream()) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** What is before the user: of a wizard the wizard, of the preferences the page that is shown. */
    private static Object subject(Shell shell) {
        Object window = shell == null ? null : shell.getData();
        if (window instanceof WizardDialog dialog && dialog.getCurrentPage() != null) {
            return dialog.getCurrentPage().getWizard();
        }
        if (window instanceof PreferenceDialog dialog) {
            return dialog.getSelectedPage();
        }
        if (shell != null && shell.getParent() != null && window instanceof Window dialog) {
            return dialog;
        }
        IWorkbenchPage page = PlatformUI.getWorkbench().getActiveWorkbenchWindow() == null ? null
                : PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
        return page == null ? null : page.getActivePart();
    }
}
