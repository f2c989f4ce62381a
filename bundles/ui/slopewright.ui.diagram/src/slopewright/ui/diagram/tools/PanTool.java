package slopewright.ui.diagram.tools;

import org.eclipse.draw2d.Cursors;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.tools.AbstractTool;

import slopewright.ui.diagram.WorldView;

/** Moves the view with the mouse. As a tracker of the ground a click that moves nothing clears the selection. */
public final class PanTool extends AbstractTool implements DragTracker {

    private WorldView view;
    private Point last;
    private boolean moved;

    /** Makes a tool of the palette, which finds its view in the viewer under the pointer. */
    public PanTool() {
        setDefaultCursor(Cursors.HAND);
    }

    /** Makes a tracker of the ground. */
    public PanTool(WorldView view) {
        this.view = view;
    }

    private WorldView view() {
        return view != null ? view : (WorldView) getCurrentViewer().getProperty(ViewNavigation.VIEW);
    }

    @Override
    protected boolean handleButtonDown(int button) {
        if (button == 1) {
            stateTransition(STATE_INITIAL, STATE_DRAG_IN_PROGRESS);
            last = getLocation().getCopy();
            moved = false;
        } else {
            setState(STATE_INVALID);
        }
        return true;
    }

    @Override
    protected boolean handleDragInProgress() {
        if (isInState(STATE_DRAG_IN_PROGRESS) && (moved || movedPastThreshold())) {
            moved = true;
            setCursor(Cursors.SIZEALL);
            view().pan(getLocation().x - last.x, getLocation().y - last.y);
            last = getLocation().getCopy();
        }
        return true;
    }

    @Override
    protected boolean handleButtonUp(int button) {
        if (isInState(STATE_DRAG_IN_PROGRESS) && !moved) {
            getCurrentViewer().deselectAll();
        }
        setState(view == null ? STATE_INITIAL : STATE_TERMINAL);
        refreshCursor();
        return true;
    }

    @Override
    protected String getCommandName() {
        return "pan";
    }

    @Override
    public void commitDrag() {
        // nothing is pending
    }
}
