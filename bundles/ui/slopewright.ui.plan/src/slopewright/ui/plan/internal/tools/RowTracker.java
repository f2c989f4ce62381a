package slopewright.ui.plan.internal.tools;

import org.eclipse.gef.EditPart;

import slopewright.ui.diagram.WorldView;
import slopewright.ui.diagram.tools.MoveTracker;

/** Selects and moves the row that a unit belongs to; a click on a unit of the row that is selected already selects the unit. */
public final class RowTracker extends MoveTracker {

    private final EditPart unit;
    private final boolean wasSelected;

    /**
     * Makes a tracker.
     *
     * @param row  the part of the whole aid
     * @param unit the part of the unit under the pointer
     * @param view tells metres from pixels
     */
    public RowTracker(EditPart row, EditPart unit, WorldView view) {
        super(row, view);
        this.unit = unit;
        this.wasSelected = row.getSelected() != EditPart.SELECTED_NONE;
    }

    @Override
    protected Object grip() {
        return unit.getModel();
    }

    @Override
    protected boolean handleButtonUp(int button) {
        boolean click = isInState(STATE_DRAG) && button == 1;
        boolean handled = super.handleButtonUp(button);
        if (click && wasSelected && !getCurrentInput().isControlKeyDown() && !getCurrentInput().isShiftKeyDown()) {
            getCurrentViewer().select(unit);
        }
        return handled;
    }
}
