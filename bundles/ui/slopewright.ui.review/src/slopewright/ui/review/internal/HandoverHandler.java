package slopewright.ui.review.internal;

import java.util.Optional;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;

import slopewright.ui.document.ProjectDocument;
import slopewright.ui.review.HandoverWizard;

/** Opens the hand-over wizard for the project in the active editor. */
public final class HandoverHandler extends AbstractHandler {

    private static Optional<ProjectDocument> document() {
        IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
        IWorkbenchPage page = window == null ? null : window.getActivePage();
        IEditorPart editor = page == null ? null : page.getActiveEditor();
        return Optional.ofNullable(editor == null ? null : Adapters.adapt(editor, ProjectDocument.class));
    }

    @Override
    public boolean isEnabled() {
        return PlatformUI.isWorkbenchRunning() && document().isPresent();
    }

    @Override
    public Object execute(ExecutionEvent event) {
        document().ifPresent(opened -> HandoverWizard.dialog(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell(), opened)
                .open());
        return null;
    }
}
