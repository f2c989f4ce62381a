package slopewright.ui.elements;

import org.eclipse.ui.views.contentoutline.ContentOutline;

/** The outline of the platform, with a name in the language of the window. */
public final class OutlineView extends ContentOutline {

    /** Id of the view. */
    public static final String ID = "slopewright.ui.outline";
}
