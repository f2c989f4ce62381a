package slopewright.ui;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;

/**
 * A view that is empty while the window starts, and filled once that was painted; opened later it is filled at once. So no view holds up
 * the plan, however many were open when the window was closed.
 */
public abstract class LateView extends ViewPart {

    private Composite place;
    private boolean isFilled;

    @Override
    public final void createPartControl(Composite parent) {
        place = parent;
        AfterStart.run(parent.getDisplay(), this::fillNow);
    }

    private void fillNow() {
        if (!place.isDisposed()) {
            fill(place);
            isFilled = true;
            getViewSite().getActionBars().updateActionBars();
            place.layout(true, true);
        }
    }

    /**
     * Makes what the view shows.
     *
     * @param parent where it is made; nothing else is in it
     */
    protected abstract void fill(Composite parent);

    @Override
    public final void setFocus() {
        if (isFilled) {
            focus();
        } else {
            place.setFocus();
        }
    }

    /** Gives the focus to what the view shows, which is there. */
    protected abstract void focus();
}
