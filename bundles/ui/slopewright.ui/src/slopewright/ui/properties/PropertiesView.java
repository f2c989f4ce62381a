package slopewright.ui.properties;

import org.eclipse.jface.viewers.ISelection;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.views.properties.PropertySheet;

import slopewright.ui.AfterStart;

/** The sheet of properties of the platform; while the window starts it is empty, and filled once that was painted. */
public final class PropertiesView extends PropertySheet {

    /** Id of the view. */
    public static final String ID = "slopewright.ui.properties";

    private Composite place;
    private boolean isFilled;

    @Override
    public void createPartControl(Composite parent) {
        place = parent;
        AfterStart.run(parent.getDisplay(), this::fill);
    }

    private void fill() {
        if (!place.isDisposed()) {
            super.createPartControl(place);
            isFilled = true;
            getViewSite().getActionBars().updateActionBars();
            place.layout(true, true);
        }
    }

    @Override
    public void setFocus() {
        if (isFilled) {
            super.setFocus();
        } else {
            place.setFocus();
        }
    }

    @Override
    public void selectionChanged(IWorkbenchPart part, ISelection selection) {
        if (isFilled) {
            super.selectionChanged(part, selection);
        }
    }
}
