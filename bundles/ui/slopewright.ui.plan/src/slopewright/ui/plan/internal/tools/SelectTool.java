package slopewright.ui.plan.internal.tools;

import org.eclipse.gef.tools.SelectionTool;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;

/** Selects and moves. Escape ends what is being dragged, else it is for the keyboard of the plan. */
public final class SelectTool extends SelectionTool {

    @Override
    protected boolean handleKeyDown(KeyEvent event) {
        if (event.character == SWT.ESC && getDragTracker() == null && getCurrentViewer().getKeyHandler() != null) {
            getCurrentViewer().getKeyHandler().keyPressed(event);
        }
        return super.handleKeyDown(event);
    }
}
