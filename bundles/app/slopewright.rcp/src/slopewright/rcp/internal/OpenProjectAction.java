package slopewright.rcp.internal;

import java.nio.file.Path;
import org.eclipse.jface.action.Action;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.IWorkbenchWindow;
import slopewright.ui.document.ProjectInput;

/** Asks for an existing project file and opens it. */
public final class OpenProjectAction extends Action {

    /** The command that keys are bound to. */
    public static final String COMMAND = "slopewright.rcp.openProject";

    private final IWorkbenchWindow window;

    /**
     * Creates the action of one window.
     *
     * @param window the window to open projects in
     */
    public OpenProjectAction(IWorkbenchWindow window) {
        super(Messages.get("open.action"));
        this.window = window;
        setId(COMMAND);
        setActionDefinitionId(COMMAND);
        setToolTipText(Messages.get("open.title"));
        setImageDescriptor(window.getWorkbench().getSharedImages().getImageDescriptor(ISharedImages.IMG_OBJ_FOLDER));
    }

    @Override
    public void run() {
        FileDialog dialog = new FileDialog(window.getShell(), SWT.OPEN);
        dialog.setText(Messages.get("open.title"));
        filter(dialog);
        String chosen = dialog.open();
        if (chosen != null) {
            ProjectOpener.open(window, Path.of(chosen));
        }
    }

    /** Lets a file dialog offer project files first. */
    static void filter(FileDialog dialog) {
        dialog.setFilterNames(new String[] {Messages.get("file.projects"), Messages.get("file.all")});
        dialog.setFilterExtensions(new String[] {"*" + ProjectInput.FILE_SUFFIX, "*"});
    }
}
