package slopewright.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;

import slopewright.evaluation.Reviews;
import slopewright.model.Project;
import slopewright.model.ReviewKind;

/** Keeps a note of the review: a comment, what is said to one, or a signature. No note changes a verdict. */
public final class KeepReviewNote extends RecordedEdit {
    private final Project project;
    private final Runnable work;

    private KeepReviewNote(String label, Project project, Runnable work) {
        super(label);
        this.project = project;
        this.work = work;
    }

    /**
     * Adds a comment, as {@link Reviews#comment} does; what that refuses is refused when the edit is carried out.
     *
     * @param project the project
     * @param element id of the element that it is about, empty for the whole project
     * @param rule    id of the rule whose outcome it is about; empty for none
     * @param said    the words, who and when
     */
    public static KeepReviewNote comment(Project project, Optional<String> element, Optional<String> rule, Reviews.Said said) {
        return new KeepReviewNote("Add comment", project, () -> Reviews.comment(project, element, rule, said));
    }

    /**
     * Replies to a comment, as {@link Reviews#reply} does.
     *
     * @param project the project
     * @param comment id of the comment
     * @param kind    an answer, an acceptance or a return
     * @param said    the words, who and when
     */
    public static KeepReviewNote reply(Project project, String comment, ReviewKind kind, Reviews.Said said) {
        String label = switch (kind) {
            case ACCEPTED -> "Accept comment";
            case RETURNED -> "Return comment";
            default -> "Answer comment";
        };
        return new KeepReviewNote(label, project, () -> Reviews.reply(project, comment, kind, said));
    }

    /**
     * Signs the project off as it stands, as {@link Reviews#signOff} does.
     *
     * @param project the project
     * @param said    what is said with it, who and when
     */
    public static KeepReviewNote signOff(Project project, Reviews.Said said) {
        return new KeepReviewNote("Sign off", project, () -> Reviews.signOff(project, said));
    }

    @Override
    protected Collection<? extends EObject> scope() {
        List<EObject> changed = new ArrayList<>(project.getReviewNotes());
        changed.add(project);
        return changed;
    }

    @Override
    protected void apply() {
        work.run();
    }
}
