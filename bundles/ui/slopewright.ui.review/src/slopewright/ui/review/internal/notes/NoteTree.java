package slopewright.ui.review.internal.notes;

import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeColumn;
import org.eclipse.swt.widgets.TreeItem;

import slopewright.evaluation.Reviews;
import slopewright.model.Project;
import slopewright.model.ReviewNote;
import slopewright.ui.AccessibleName;
import slopewright.ui.review.internal.Messages;
import slopewright.ui.review.internal.PathPainter;
import slopewright.ui.theme.TypeScale;

/** The comments of a review, what was said to each under it, and the signature last. */
public final class NoteTree {
    private static final String[] COLUMNS = {"said", "about", "state", "person", "date"};
    private static final int SAID = 0;
    private static final int ABOUT = 1;
    private static final int PAD_PX = 22;
    private static final int INDENT_PX = 44;
    private static final int LEAST_SAID_PX = 170;
    private static final int LEAST_ABOUT_PX = 110;
    private static final double SHARE_OF_SAID = 0.6;

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
        }
        PathPainter.paint(tree, (item, column) -> column == ABOUT);
        fit();
        tree.addListener(SWT.Resize, event -> tree.getDisplay().asyncExec(this::fit));
    }

    /** State, name and date are whole; what was said and what it is about share the rest. */
    private void fit() {
        if (tree.isDisposed()) {
            return;
        }
        GC gc = new GC(tree);
        try {
            int rest = tree.getClientArea().width;
            for (int i = ABOUT + 1; i < COLUMNS.length; i++) {
                int column = i;
                int needed = gc.textExtent(tree.getColumn(i).getText()).x;
                needed = items().map(item -> gc.textExtent(item.getText(column)).x).reduce(needed, Math::max) + TypeScale.px(PAD_PX);
                tree.getColumn(i).setWidth(needed);
                rest -= needed;
            }
            int said = Math.max(TypeScale.px(LEAST_SAID_PX), (int) (SHARE_OF_SAID * rest));
            tree.getColumn(SAID).setWidth(said);
            tree.getColumn(ABOUT).setWidth(Math.max(TypeScale.px(LEAST_ABOUT_PX), rest - said));
        } finally {
            gc.dispose();
        }
    }

    private Stream<TreeItem> items() {
        return Stream.of(tree.getItems()).flatMap(item -> Stream.concat(Stream.of(item), Stream.of(item.getItems())));
    }

    /** Returns what was said in the selected row, where its column has no room for it. */
    public Optional<String> cut() {
        GC gc = new GC(tree);
        try {
            return Stream.of(tree.getSelection()).map(item -> item.getText(SAID))
                    .filter(text -> gc.textExtent(text).x + INDENT_PX > tree.getColumn(SAID).getWidth()).findFirst();
        } finally {
            gc.dispose();
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
        fit();
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
