package slopewright.rcp.internal;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.preferences.Preferences;

/** Saves changed projects that have a file by themselves every so many minutes, where the user wants that. */
public final class AutoSave {

    private static final int MINUTE_MS = 60_000;

    private final IWorkbenchWindow window;
    private int minutes;

    private AutoSave(IWorkbenchWindow window) {
        this.window = window;
    }

    /**
     * Watches the editors of a window as long as it is open.
     *
     * @param window the window
     */
    public static void watch(IWorkbenchWindow window) {
        new AutoSave(window).later();
    }

    private void later() {
        Display display = window.getWorkbench().getDisplay();
        display.timerExec(MINUTE_MS, () -> {
            if (window.getShell() != null && !window.getShell().isDisposed()) {
                minutes++;
                int wanted = Preferences.autosaveMinutes();
                if (wanted > 0 && minutes >= wanted) {
                    minutes = 0;
                    save(window);
                }
                later();
            }
        });
    }

    /**
     * Saves every changed project of a window that has been saved before.
     *
     * @param window the window
     */
    public static void save(IWorkbenchWindow window) {
        IWorkbenchPage page = window.getActivePage();
        if (page == null) {
            return;
        }
        for (IEditorPart editor : page.getDirtyEditors()) {
            ProjectDocument document = Adapters.adapt(editor, ProjectDocument.class);
            if (document != null && editor.getEditorInput().exists()) {
                page.saveEditor(editor, false);
            }
        }
    }
}
