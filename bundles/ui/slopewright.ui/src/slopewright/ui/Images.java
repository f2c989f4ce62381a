package slopewright.ui;

import java.net.URL;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.ResourceManager;
import org.eclipse.swt.graphics.Image;

import slopewright.checks.Outcome;
import slopewright.checks.Result;

/** The images of the window. Verdicts differ in shape as well as in colour. */
public enum Images {

    /** A rule that is met: a disc. */
    MET("met"),
    /** A rule that is not met: an octagon. */
    NOT_MET("not-met"),
    /** Something to clear up: a triangle. */
    WARNING("warning"),
    /** Something worth knowing: a square. */
    NOTE("note"),
    /** A rule that lacks an input: a diamond. */
    NOT_EVALUATED("not-evaluated"),
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

    /** Returns the image of an outcome by its verdict; what is to be cleared up by whether an input or a confirmation is missing. */
    public static Images of(Outcome outcome) {
        return switch (outcome.verdict()) {
            case NOT_MET -> NOT_MET;
            case TO_CLEAR_UP -> outcome.result() == Result.NOT_EVALUATED ? NOT_EVALUATED : WARNING;
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
