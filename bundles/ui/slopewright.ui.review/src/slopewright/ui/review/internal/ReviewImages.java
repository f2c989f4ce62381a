package slopewright.ui.review.internal;

import java.net.URL;

import org.eclipse.jface.resource.ImageDescriptor;

/** The images of the review views that no other part of the window has. */
public enum ReviewImages {

    /** Rows under their verdict, as a checklist. */
    BY_VERDICT("by-verdict"),
    /** Rows under the element that they are about. */
    BY_ELEMENT("by-element"),
    /** Rows under the rule that they come from. */
    BY_RULE("by-rule"),
    /** Rows without headings. */
    LIST("list"),
    /** Write into a file. */
    EXPORT("export");

    private final String file;

    ReviewImages(String file) {
        this.file = file;
    }

    /** Returns the descriptor; sharp at every zoom. */
    public ImageDescriptor descriptor() {
        URL url = ReviewImages.class.getResource("/icons/" + file + ".svg");
        return url == null ? ImageDescriptor.getMissingImageDescriptor() : ImageDescriptor.createFromURL(url);
    }
}
