package slopewright.rcp.internal;

import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.IWorkbenchWindow;
import slopewright.ui.document.ProjectInput;

/** Asks where a new project shall be kept and opens the editor on it; the editor writes the file at the first save. */
public final class NewProjectAction extends Action {

    private final IWorkbenchWindow window;

    /**
     * Creates the action of one window.
     *
     * @param window the window to open the new project in
     */
    public NewProjectAction(IWorkbenchWindow window) {
        super("&New…");
        this.window = window;
        setId("slopewright.rcp.newProject");
        setActionDefinitionId(IWorkbenchCommandConstants.FILE_NEW);
        setToolTipText("Begin a new project");
        setImageDescriptor(window.getWorkbench().getSharedImages().getImageDescriptor(ISharedImages.IMG_TOOL_NEW_WIZARD));
    }

    @Override
    public void run() {
        FileDialog dialog = new FileDialog(window.getShell(), SWT.SAVE);
        dialog.setText("Begin a new project");
        OpenProjectAction.filter(dialog);
        dialog.setFileName("untitled" + ProjectInput.FILE_SUFFIX);
        String chosen = dialog.open();
        if (chosen == null) {
            return;
        }
        Path project = Path.of(chosen.endsWith(ProjectInput.FILE_SUFFIX) ? chosen : chosen + ProjectInput.FILE_SUFFIX);
        if (Files.exists(project)) {
            MessageDialog.openError(window.getShell(), "The project can't be begun",
                    project + " exists already. Open it, or choose another name.");
            return;
        }
        ProjectOpener.edit(window, project);
    }
}
