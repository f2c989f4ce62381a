package slopewright.ui.internal;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;

import slopewright.ui.document.ActiveDocument;
import slopewright.ui.elements.ElementsView;

/** Shows the tables of the elements of the active project. */
public final class ElementsHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchPage page = ActiveDocument.page().orElse(null);
        if (page != null) {
            try {
                page.showView(ElementsView.ID).setFocus();
            } catch (PartInitException e) {
                throw new ExecutionException(e.getMessage(), e);
            }
        }
        return null;
    }
}
