package slopewright.rcp.internal;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

import slopewright.ui.elements.OutlineView;
import slopewright.ui.profile.DirectionsView;
import slopewright.ui.profile.PilotView;
import slopewright.ui.profile.SectionView;
import slopewright.ui.properties.PropertiesView;
import slopewright.ui.review.FindingsView;

/** Lays out the window for looking at the signal: the pilot's view at large, the section below it, the plan beside them. */
public final class PilotPerspective implements IPerspectiveFactory {

    /** The id under which the perspective is registered. */
    public static final String ID = "slopewright.rcp.pilot";

    private static final float SHARE_OF_PLAN = 0.36f;
    private static final float SHARE_OF_PICTURE = 0.58f;

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.setEditorAreaVisible(true);
        IFolderLayout picture = layout.createFolder("picture", IPageLayout.RIGHT, SHARE_OF_PLAN, layout.getEditorArea());
        picture.addView(PilotView.ID);
        IFolderLayout section = layout.createFolder("section", IPageLayout.BOTTOM, SHARE_OF_PICTURE, "picture");
        section.addView(SectionView.ID);
        section.addView(DirectionsView.ID);
        IFolderLayout below = layout.createFolder("below", IPageLayout.BOTTOM, SHARE_OF_PICTURE, layout.getEditorArea());
        below.addView(PropertiesView.ID);
        below.addView(FindingsView.ID);
        below.addPlaceholder(OutlineView.ID);
        below.addPlaceholder("slopewright.ui.*");
        SitingPerspective.offerViews(layout);
    }
}
