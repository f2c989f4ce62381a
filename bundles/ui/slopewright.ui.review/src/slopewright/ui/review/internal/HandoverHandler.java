package slopewright.ui.review.internal;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.PlatformUI;

import slopewright.ui.document.ActiveDocument;
import slopewright.ui.review.HandoverWizard;

/** Opens the hand-over wizard for the project in the active editor. */
public final class HandoverHandler extends AbstractHandler {

    @Override
    public boolean isEnabled() {
        return ActiveDocument.get().isPresent();
    }

    @Override
    public Object execute(ExecutionEvent event) {
        ActiveDocument.get().ifPresent(opened -> HandoverWizard
                .dialog(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell(), opened).open());
        return null;
    }
}
