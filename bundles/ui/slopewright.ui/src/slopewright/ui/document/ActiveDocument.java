package slopewright.ui.document;

import java.util.Optional;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;

/** The document of the active editor, for commands of the menus. */
public final class ActiveDocument {

    private ActiveDocument() {
    }

    /** Returns the page of the active window, empty where there is none. */
    public static Optional<IWorkbenchPage> page() {
        IWorkbenchWindow window = PlatformUI.isWorkbenchRunning() ? PlatformUI.getWorkbench().getActiveWorkbenchWindow() : null;
        return Optional.ofNullable(window == null ? null : window.getActivePage());
    }

    /** Returns the document, empty where no project is open. */
    public static Optional<ProjectDocument> get() {
        IEditorPart editor = page().map(IWorkbenchPage::getActiveEditor).orElse(null);
        return Optional.ofNullable(editor == null ? null : Adapters.adapt(editor, ProjectDocument.class));
    }
}
