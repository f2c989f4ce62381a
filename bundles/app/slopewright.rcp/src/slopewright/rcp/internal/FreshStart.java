package slopewright.rcp.internal;

import java.io.IOException;

import org.eclipse.core.runtime.ILog;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchWindow;

/**
 * Starts the window anew, for a language holds from the start of the program on. Before, the workbench asks about unsaved work; after it,
 * what was open is open again. The start script says by a property of the system where it lies.
 */
final class FreshStart {

    private static final String SCRIPT = "slopewright.start";

    private FreshStart() {
    }

    /** Asks whether the window shall start anew now, and lets it. */
    static void offer(IWorkbench workbench) {
        IWorkbenchWindow window = workbench.getActiveWorkbenchWindow();
        if (window == null || System.getProperty(SCRIPT) == null) {
            return;
        }
        int answer = MessageDialog.open(MessageDialog.QUESTION, window.getShell(), Messages.get("fresh.title"),
                Messages.get("fresh.text"), 0, Messages.get("fresh.now"), Messages.get("fresh.later"));
        if (answer == 0) {
            workbench.restart();
        }
    }

    /** Begins a further start, after everything of this one was given back; returns how this one ends. */
    static Integer begin() {
        String script = System.getProperty(SCRIPT);
        if (script == null) {
            return IApplication.EXIT_RESTART;
        }
        try {
            new ProcessBuilder(script).inheritIO().start();
        } catch (IOException e) {
            ILog.get().error("The window cannot be started anew", e);
        }
        return IApplication.EXIT_OK;
    }
}
