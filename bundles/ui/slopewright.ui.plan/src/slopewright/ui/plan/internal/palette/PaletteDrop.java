package slopewright.ui.plan.internal.palette;

import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.dnd.TemplateTransferDropTargetListener;
import org.eclipse.gef.requests.CreationFactory;

/** Takes what is dragged from the palette onto the plan, and places it as a click does. */
public final class PaletteDrop extends TemplateTransferDropTargetListener {

    /** Makes it for the viewer of a plan. */
    public PaletteDrop(EditPartViewer viewer) {
        super(viewer);
    }

    @Override
    protected CreationFactory getFactory(Object template) {
        return new PlanPalette.Making((Placed) template);
    }
}
