package slopewright.ui;

import java.net.URL;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.ResourceManager;
import org.eclipse.swt.graphics.Image;

import slopewright.checks.Verdict;

/** The images of the window. Verdicts differ in shape as well as in colour. */
public enum Images {

    /** A rule that is met: a disc. */
    MET("met"),
    /** A rule that is not met: an octagon. */
    NOT_MET("not-met"),
    /** Something to clear up: a triangle. */
    TO_CLEAR_UP("to-clear-up"),
    /** Something worth knowing: a square. */
    NOTE("note"),
    /** A rule that has nothing to say: a ring. */
    NOT_APPLICABLE("not-applicable"),
    /** The findings view. */
    FINDINGS("findings"),
    /** The comparison view. */
    COMPARISON("comparison"),
    /** Every outcome instead of findings only. */
    ALL("all"),
    /** A remedy. */
    FIX("fix"),
    /** An approach aid. */
    AID("aid"),
    /** A project. */
    PROJECT("project");

    private final String file;

    Images(String file) {
        this.file = file;
    }

    /** Returns the image of a verdict. */
    public static Images of(Verdict verdict) {
        return switch (verdict) {
            case NOT_MET -> NOT_MET;
            case TO_CLEAR_UP -> TO_CLEAR_UP;
            case MET -> MET;
            case NOT_APPLICABLE -> NOT_APPLICABLE;
        };
    }

    /** Returns the descriptor; sharp at every zoom. */
    public ImageDescriptor descriptor() {
        URL url = Images.class.getResource("/icons/" + file + ".svg");
        return url == null ? ImageDescriptor.getMissingImageDescriptor() : ImageDescriptor.createFromURL(url);
    }

    /**
     * Returns the image.
     *
     * @param resources owns the image and disposes it
     */
    public Image image(ResourceManager resources) {
        return resources.get(descriptor());
    }
}
