package slopewright.ui.document;

import java.util.Set;

import slopewright.checks.CheckResult;

/** Is told what happens to a project in the window; always on the user interface thread. */
public interface DocumentListener {

    /**
     * Called after an edit, an undo or a redo, and where other units were chosen.
     *
     * @param elementIds ids of the elements that were changed, added or removed; none where only the units are others
     */
    default void changed(Set<String> elementIds) {
        // of no interest unless overridden
    }

    /**
     * Called when a background check has ended that saw the project as it is now.
     *
     * @param result what the rules say
     */
    default void checked(CheckResult result) {
        // of no interest unless overridden
    }

    /** Called when the project cannot be checked as it stands: what a check said of it before holds no longer. */
    default void unchecked() {
        // of no interest unless overridden
    }

    /** Called when survey points were read in the background, so that figures can be told that were not known before. */
    default void pointsRead() {
        // of no interest unless overridden
    }

    /** Called when the file, the dirty state, or whether a check is running or cannot be made has changed. */
    default void stateChanged() {
        // of no interest unless overridden
    }
}
