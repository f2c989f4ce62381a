package slopewright.ui.review.internal.notes;

import java.util.Optional;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeColumn;
import org.eclipse.swt.widgets.TreeItem;

import slopewright.evaluation.Reviews;
import slopewright.model.Project;
import slopewright.model.ReviewNote;
import slopewright.ui.AccessibleName;
import slopewright.ui.review.internal.Messages;
import slopewright.ui.theme.TypeScale;

/** The comments of a review, what was said to each under it, and the signature last. */
public final class NoteTree {
    private static final String[] COLUMNS = {"said", "about", "state", "person", "date"};
    private static final int[] WIDTHS = {340, 260, 110, 130, 100};

    private final Tree tree;
    private Optional<Project> shown = Optional.empty();
    private boolean openOnly;

    /** Makes the tree. */
    public NoteTree(Composite parent) {
        tree = new Tree(parent, SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL);
        tree.setHeaderVisible(true);
        AccessibleName.give(tree, Messages.get("notes.title"));
        for (int i = 0; i < COLUMNS.length; i++) {
            TreeColumn column = new TreeColumn(tree, SWT.LEFT);
            column.setText(Messages.get("notes.column." + COLUMNS[i]));
            column.setWidth(TypeScale.px(WIDTHS[i]));
        }
    }

    /** Shows the review of a project; the comment that was selected stays so. */
    public void show(Optional<Project> project) {
        shown = project;
        Optional<String> before = selected().map(thread -> thread.comment().getId());
        tree.setRedraw(false);
        tree.removeAll();
        project.ifPresent(opened -> {
            Reviews.threads(opened).stream().filter(thread -> !openOnly || thread.isOpen()).forEach(thread -> add(opened, thread));
            Reviews.signedOff(opened).filter(note -> !openOnly).ifPresent(note -> signature(opened, note));
        });
        tree.setRedraw(true);
        before.ifPresent(this::select);
    }

    private void add(Project project, Reviews.Thread thread) {
        TreeItem item = new TreeItem(tree, SWT.NONE);
        item.setData(thread);
        fill(item, thread.comment(), NoteTexts.about(project, thread.comment()), NoteTexts.word(thread.state()));
        if (thread.isOpen()) {
            item.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        }
        for (ReviewNote reply : thread.replies()) {
            TreeItem under = new TreeItem(item, SWT.NONE);
            under.setData(thread);
            fill(under, reply, "", NoteTexts.word(reply.getKind()));
        }
        item.setExpanded(true);
    }

    private void signature(Project project, ReviewNote note) {
        fill(new TreeItem(tree, SWT.NONE), note, Messages.get("notes.project"),
                Messages.get(Reviews.isAsSigned(project, note) ? "notes.word.signed-off" : "notes.word.changed-since"));
    }

    private static void fill(TreeItem item, ReviewNote note, String about, String state) {
        item.setText(new String[] {note.getText() == null ? "" : note.getText(), about, state, String.valueOf(note.getPerson()),
                String.valueOf(note.getDate())});
    }

    /** Shows only what is open, or everything. */
    public void openOnly(boolean only) {
        openOnly = only;
        show(shown);
    }

    /** Returns the comment that is selected, or under which the selected reply stands. */
    public Optional<Reviews.Thread> selected() {
        TreeItem[] items = tree.getSelection();
        return items.length == 1 && items[0].getData() instanceof Reviews.Thread thread ? Optional.of(thread) : Optional.empty();
    }

    /** Selects a comment. */
    public void select(String comment) {
        for (TreeItem item : tree.getItems()) {
            if (item.getData() instanceof Reviews.Thread thread && comment.equals(thread.comment().getId())) {
                tree.setSelection(item);
            }
        }
    }

    /** Returns the widget. */
    public Tree control() {
        return tree;
    }
}
