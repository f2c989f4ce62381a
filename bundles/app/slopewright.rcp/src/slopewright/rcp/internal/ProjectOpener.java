package slopewright.rcp.internal;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import slopewright.ui.document.ProjectInput;

/** Opens project files in the plan editor, and says why where one can't be opened. */
public final class ProjectOpener {

    /** The editor that opens a project. */
    public static final String EDITOR = "slopewright.ui.plan.editor";

    private ProjectOpener() {
    }

    /**
     * Opens an existing project, or tells the user in a dialog why that can't be done.
     *
     * @param window the window to open it in
     * @param project the project file
     * @return true where an editor was opened
     */
    public static boolean open(IWorkbenchWindow window, Path project) {
        Optional<String> obstacle = obstacle(project);
        if (obstacle.isPresent()) {
            MessageDialog.openError(window.getShell(), Messages.get("open.failed"), obstacle.get());
            return false;
        }
        return edit(window, project);
    }

    /**
     * Opens the editor on a project whose file need not exist yet, or tells the user in a dialog why that can't be done.
     *
     * @param window the window to open it in
     * @param project the project file
     * @return true where an editor was opened
     */
    public static boolean edit(IWorkbenchWindow window, Path project) {
        try {
            return window.getActivePage().openEditor(new ProjectInput(project), EDITOR) != null;
        } catch (PartInitException e) {
            MessageDialog.openError(window.getShell(), Messages.get("open.failed"), project + "\n" + e.getMessage());
            return false;
        }
    }

    /**
     * Tells what stands against reading a file.
     *
     * @param project the file
     * @return the reason in words that name the file; empty where there is none
     */
    public static Optional<String> obstacle(Path project) {
        if (!Files.exists(project)) {
            return Optional.of(Messages.get("open.missing", project));
        }
        if (Files.isDirectory(project)) {
            return Optional.of(Messages.get("open.folder", project));
        }
        if (!Files.isReadable(project)) {
            return Optional.of(Messages.get("open.permission", project));
        }
        return Optional.empty();
    }
}
