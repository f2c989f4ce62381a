package slopewright.ui.profile;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;

/** What the pilot sees of the chosen aid. */
public final class PilotView extends ViewPart {

    @Override
    public void createPartControl(Composite parent) {
        // filled by the view
    }

    @Override
    public void setFocus() {
        // filled by the view
    }
}
