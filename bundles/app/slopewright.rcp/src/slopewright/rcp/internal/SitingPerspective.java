package slopewright.rcp.internal;

import java.util.List;

import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

import slopewright.ui.elements.ElementsView;
import slopewright.ui.elements.OutlineView;
import slopewright.ui.profile.DirectionsView;
import slopewright.ui.profile.PilotView;
import slopewright.ui.profile.SectionView;
import slopewright.ui.properties.PropertiesView;
import slopewright.ui.review.BookView;
import slopewright.ui.review.ComparisonView;
import slopewright.ui.review.FindingsView;
import slopewright.ui.review.MeasuredView;
import slopewright.ui.review.ReviewView;
import slopewright.ui.review.VersionsView;
import slopewright.ui.theme.TypeScale;

/** Lays out the window for drafting: the editors in the middle, properties to the right, findings below. */
public final class SitingPerspective implements IPerspectiveFactory {

    /** The id under which the perspective is registered. */
    public static final String ID = "slopewright.rcp.perspective";

    private static final double SHARE_OF_PROPERTIES = 0.25;
    private static final double MOST_TIMES = 1.4;
    private static final double LEAST_LEFT_PX = 1040;
    private static final float SHARE_ABOVE_FINDINGS = 0.64f;
    private static final float SHARE_ON_A_LOW_SCREEN = 0.56f;
    private static final int LOW_SCREEN_PX = 900;

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.setEditorAreaVisible(true);
        IFolderLayout right = layout.createFolder("right", IPageLayout.RIGHT, shareLeftOfProperties(), layout.getEditorArea());
        right.addView(PropertiesView.ID);
        right.addPlaceholder(OutlineView.ID);
        IFolderLayout bottom = layout.createFolder("bottom", IPageLayout.BOTTOM, shareAboveFindings(), layout.getEditorArea());
        bottom.addView(FindingsView.ID);
        bottom.addPlaceholder("slopewright.ui.*");
        layout.addShowViewShortcut(FindingsView.ID);
        layout.addShowViewShortcut(PropertiesView.ID);
        layout.addShowViewShortcut(OutlineView.ID);
    }

    /** Offers the views that the bundles of the product add to the first arrangement in another one too. */
    static void offerViews(IPageLayout layout) {
        List.of(FindingsView.ID, PropertiesView.ID, OutlineView.ID, ElementsView.ID, SectionView.ID, PilotView.ID,
                DirectionsView.ID, ReviewView.ID, ComparisonView.ID, VersionsView.ID, MeasuredView.ID, BookView.ID)
                .forEach(layout::addShowViewShortcut);
    }

    /** Where letters are large, names and values of properties need more of a window that is wide enough. */
    private static float shareLeftOfProperties() {
        double usual = 1 - SHARE_OF_PROPERTIES;
        int width = Display.getDefault().getPrimaryMonitor().getClientArea().width;
        return (float) Math.max(1 - SHARE_OF_PROPERTIES * Math.min(MOST_TIMES, TypeScale.factor()), Math.min(usual, LEAST_LEFT_PX / width));
    }

    /** Below the plan there is room for more than a few rows on a low screen too. */
    private static float shareAboveFindings() {
        int height = Display.getDefault().getPrimaryMonitor().getClientArea().height;
        return height < LOW_SCREEN_PX ? SHARE_ON_A_LOW_SCREEN : SHARE_ABOVE_FINDINGS;
    }
}
