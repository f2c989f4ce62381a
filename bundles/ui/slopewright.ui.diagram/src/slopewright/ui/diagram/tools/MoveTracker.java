package slopewright.ui.diagram.tools;

import org.eclipse.draw2d.Cursors;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.tools.SelectEditPartTracker;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Cursor;

import slopewright.drawing.scene.ScenePoint;
import slopewright.ui.diagram.WorldView;
import slopewright.ui.diagram.policies.MoveRequest;

/** Selects a part when it is clicked, and moves it with the mouse: what it would give is shown all the time, and dropping is one edit. */
public class MoveTracker extends SelectEditPartTracker {

    private final WorldView view;
    private final MoveRequest request = new MoveRequest();
    private boolean shown;

    /**
     * Makes a tracker.
     *
     * @param part the part
     * @param view tells metres from pixels
     */
    public MoveTracker(EditPart part, WorldView view) {
        super(part);
        this.view = view;
        setDisabledCursor(Cursors.NO);
    }

    @Override
    protected Cursor calculateCursor() {
        return isInState(STATE_DRAG_IN_PROGRESS) ? Cursors.SIZEALL : super.calculateCursor();
    }

    /** Returns the element by which the user has taken what is moved. */
    protected Object grip() {
        return getSourceEditPart().getModel();
    }

    @Override
    protected boolean handleDragStarted() {
        return stateTransition(STATE_DRAG, STATE_DRAG_IN_PROGRESS);
    }

    @Override
    protected boolean handleDragInProgress() {
        if (isInState(STATE_DRAG_IN_PROGRESS)) {
            request.setDelta(getDragMoveDelta().width / view.scale(), -getDragMoveDelta().height / (view.scale() * view.exaggeration()));
            request.setFrom(new ScenePoint(view.worldX(getStartLocation().x), view.worldY(getStartLocation().y)));
            request.setFree(getCurrentInput().isShiftKeyDown());
            request.setUnsnapped(getCurrentInput().isModKeyDown(SWT.MOD1) || getCurrentInput().isAltKeyDown());
            request.setGrip(grip());
            shown = true;
            getSourceEditPart().showSourceFeedback(request);
            setCurrentCommand(getSourceEditPart().getCommand(request));
        }
        return true;
    }

    @Override
    protected boolean handleButtonUp(int button) {
        if (stateTransition(STATE_DRAG_IN_PROGRESS, STATE_TERMINAL)) {
            eraseFeedback();
            executeCurrentCommand();
            return true;
        }
        return super.handleButtonUp(button);
    }

    @Override
    protected boolean handleInvalidInput() {
        eraseFeedback();
        setCurrentCommand(null);
        return true;
    }

    @Override
    public void deactivate() {
        eraseFeedback();
        super.deactivate();
    }

    private void eraseFeedback() {
        if (shown) {
            shown = false;
            getSourceEditPart().eraseSourceFeedback(request);
        }
    }

    @Override
    protected String getCommandName() {
        return REQ_MOVE;
    }
}
