package slopewright.ui.profile;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;

/** The vertical section along the approach of the chosen aid. */
public final class SectionView extends ViewPart {

    @Override
    public void createPartControl(Composite parent) {
        // filled by the section
    }

    @Override
    public void setFocus() {
        // filled by the section
    }
}
