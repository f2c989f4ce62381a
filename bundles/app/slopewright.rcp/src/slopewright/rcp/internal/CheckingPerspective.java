package slopewright.rcp.internal;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

import slopewright.ui.elements.OutlineView;
import slopewright.ui.properties.PropertiesView;
import slopewright.ui.review.BookView;
import slopewright.ui.review.ComparisonView;
import slopewright.ui.review.FindingsView;
import slopewright.ui.review.MeasuredView;
import slopewright.ui.review.ReviewView;
import slopewright.ui.review.VersionsView;

/** Lays out the window for a checker: the findings as wide as the window, above them the plan, what was said and what is selected. */
public final class CheckingPerspective implements IPerspectiveFactory {

    /** The id under which the perspective is registered. */
    public static final String ID = "slopewright.rcp.checking";

    private static final float SHARE_ABOVE_FINDINGS = 0.45f;
    private static final float SHARE_OF_PLAN = 0.52f;

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.setEditorAreaVisible(true);
        IFolderLayout bottom = layout.createFolder("findings", IPageLayout.BOTTOM, SHARE_ABOVE_FINDINGS, layout.getEditorArea());
        bottom.addView(FindingsView.ID);
        bottom.addView(ComparisonView.ID);
        bottom.addView(VersionsView.ID);
        bottom.addView(BookView.ID);
        bottom.addView(MeasuredView.ID);
        bottom.addPlaceholder("slopewright.ui.*");
        IFolderLayout right = layout.createFolder("right", IPageLayout.RIGHT, SHARE_OF_PLAN, layout.getEditorArea());
        right.addView(ReviewView.ID);
        right.addView(PropertiesView.ID);
        right.addPlaceholder(OutlineView.ID);
        SitingPerspective.offerViews(layout);
    }
}
