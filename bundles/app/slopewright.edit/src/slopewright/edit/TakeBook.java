package slopewright.edit;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;

import slopewright.evaluation.BookUse;
import slopewright.model.Project;
import slopewright.standards.ValueBook;

/** Takes the signed entries of a book of values, on which results of the project rest, into the project. */
public final class TakeBook extends RecordedEdit {
    private final Project project;
    private final ValueBook book;
    private final String path;
    private final Set<String> resting;

    private TakeBook(Project project, ValueBook book, String path, Set<String> resting) {
        super("Take the book of values");
        this.project = project;
        this.book = book;
        this.path = path;
        this.resting = Set.copyOf(resting);
    }

    /**
     * Takes entries, instead of those that were taken before.
     *
     * @param project the project
     * @param book    the book, as it stands in its file
     * @param path    how the project names the book
     * @param resting the values that results of the project rest on, each as rule set and key joined by a blank
     */
    public static TakeBook of(Project project, ValueBook book, String path, Set<String> resting) {
        return new TakeBook(project, book, path, resting);
    }

    @Override
    protected Collection<? extends EObject> scope() {
        Set<EObject> changed = new LinkedHashSet<>();
        changed.add(project);
        changed.addAll(project.getConfirmations());
        changed.addAll(project.getOverrides());
        return changed;
    }

    @Override
    protected void apply() {
        BookUse.take(project, book, path, resting);
    }
}
