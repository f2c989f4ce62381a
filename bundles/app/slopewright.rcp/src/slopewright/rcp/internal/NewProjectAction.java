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
        super(Messages.get("new.action"));
        this.window = window;
        setId("slopewright.rcp.newProject");
        setActionDefinitionId(IWorkbenchCommandConstants.FILE_NEW);
        setToolTipText(Messages.get("new.title"));
        setImageDescriptor(window.getWorkbench().getSharedImages().getImageDescriptor(ISharedImages.IMG_TOOL_NEW_WIZARD));
    }

    @Override
    public void run() {
        FileDialog dialog = new FileDialog(window.getShell(), SWT.SAVE);
        dialog.setText(Messages.get("new.title"));
        OpenProjectAction.filter(dialog);
        dialog.setFileName(Messages.get("new.name") + ProjectInput.FILE_SUFFIX);
        String chosen = dialog.open();
        if (chosen == null) {
            return;
        }
        Path project = Path.of(chosen.endsWith(ProjectInput.FILE_SUFFIX) ? chosen : chosen + ProjectInput.FILE_SUFFIX);
        if (Files.exists(project)) {
            MessageDialog.openError(window.getShell(), Messages.get("new.failed"),
                    Messages.get("new.exists", project));
            return;
        }
        ProjectOpener.edit(window, project);
    }
}
