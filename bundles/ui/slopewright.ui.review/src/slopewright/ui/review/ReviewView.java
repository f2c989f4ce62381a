package slopewright.ui.review;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;

import slopewright.checks.CheckResult;
import slopewright.evaluation.Reviews;
import slopewright.model.Project;
import slopewright.model.ReviewKind;
import slopewright.ui.AccessibleName;
import slopewright.ui.LateView;
import slopewright.ui.document.DocumentFollower;
import slopewright.ui.document.DocumentListener;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.review.internal.Messages;
import slopewright.ui.review.internal.notes.NoteDesk;
import slopewright.ui.review.internal.notes.NoteTexts;
import slopewright.ui.review.internal.notes.NoteTree;

/**
 * The review of the project in the active editor: comments on elements and findings, what was said to each, what is open, and who signed
 * off. A comment is answered, returned or accepted here; no note changes a verdict.
 */
public final class ReviewView extends LateView {

    /** Id of the view. */
    public static final String ID = "slopewright.ui.review.notes";

    private static final int MOST_OF_HEIGHT = 3;

    private DocumentFollower follower;
    private CLabel state;
    private NoteTree tree;
    private Text whole;
    private Button comment;
    private Button answer;
    private Button back;
    private Button accept;
    private Button sign;

    private final class Follow implements DocumentListener {

        @Override
        public void changed(Set<String> elementIds) {
            update();
        }

        @Override
        public void checked(CheckResult result) {
            enable();
        }

        @Override
        public void stateChanged() {
            enable();
        }
    }

    @Override
    protected void fill(Composite parent) {
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(parent);
        state = new CLabel(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).indent(3, 2).hint(60, SWT.DEFAULT).applyTo(state);
        Composite head = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(head);
        RowLayoutFactory.fillDefaults().wrap(true).center(true).spacing(4).margins(6, 2).applyTo(head);
        comment = button(head, "comment", () -> desk().ifPresent(desk -> desk.askComment(getSite().getShell(), element(),
                Optional.empty())));
        answer = button(head, "answer", () -> reply(ReviewKind.ANSWER));
        back = button(head, "return", () -> reply(ReviewKind.RETURNED));
        accept = button(head, "accept", () -> reply(ReviewKind.ACCEPTED));
        sign = button(head, "sign", () -> desk().ifPresent(desk -> desk.askSignature(getSite().getShell())));
        Button open = new Button(head, SWT.CHECK);
        open.setText(Messages.get("notes.open-only"));
        tree = new NoteTree(parent);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(tree.control());
        whole = new Text(parent, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL);
        AccessibleName.give(whole, Messages.get("notes.column.said"));
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(whole);
        whole.setVisible(false);
        tree.control().addListener(SWT.Resize, event -> parent.getDisplay().asyncExec(this::sayWhole));
        open.addListener(SWT.Selection, event -> tree.openOnly(open.getSelection()));
        tree.control().addListener(SWT.Selection, event -> selected());
        tree.control().addListener(SWT.DefaultSelection, event -> tree.selected().map(thread -> thread.comment().getElementId())
                .ifPresent(follower::reveal));
        follower = new DocumentFollower(getSite().getPage(), new Follow(), document -> update());
        update();
    }

    private static Button button(Composite parent, String key, Runnable action) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(Messages.get("notes." + key));
        button.setToolTipText(Messages.get("notes." + key + ".tip"));
        button.addListener(SWT.Selection, event -> action.run());
        return button;
    }

    private Optional<ProjectDocument> document() {
        return follower == null ? Optional.empty() : follower.document();
    }

    private Optional<NoteDesk> desk() {
        return document().map(NoteDesk::new);
    }

    /** The element that is selected, in whichever view. */
    private Optional<String> element() {
        return document().map(document -> document.viewState().selection().get(0).getId());
    }

    private void reply(ReviewKind kind) {
        tree.selected().ifPresent(thread -> desk().ifPresent(desk -> desk.askReply(getSite().getShell(), thread, kind)));
        tree.control().setFocus();
    }

    private void update() {
        if (state == null || state.isDisposed()) {
            return;
        }
        Optional<Project> project = document().map(ProjectDocument::project);
        state.setText(project.map(NoteTexts::state).orElse(Messages.get("findings.noProject")));
        state.setToolTipText(state.getText());
        tree.show(project);
        enable();
    }

    private void selected() {
        tree.selected().ifPresent(thread -> document().ifPresent(document -> Reviews.element(document.project(), thread.comment())
                .ifPresent(element -> document.viewState().select(List.of(element)))));
        enable();
    }

    /** What was said and has no room in its row stands whole below the rows. */
    private void sayWhole() {
        if (whole.isDisposed()) {
            return;
        }
        whole.setText(tree.cut().orElse(""));
        Composite parent = whole.getParent();
        GridData place = (GridData) whole.getLayoutData();
        int needed = whole.computeSize(parent.getClientArea().width, SWT.DEFAULT).y;
        int height = Math.min(needed, parent.getClientArea().height / MOST_OF_HEIGHT);
        boolean isEmpty = whole.getText().isEmpty();
        if (place.exclude != isEmpty || place.heightHint != height) {
            place.exclude = isEmpty;
            place.heightHint = height;
            whole.setVisible(!isEmpty);
            parent.layout(true);
        }
    }

    private void enable() {
        if (state == null || state.isDisposed()) {
            return;
        }
        sayWhole();
        boolean isOpen = tree.selected().filter(Reviews.Thread::isOpen).isPresent();
        Stream.of(answer, back, accept).forEach(button -> button.setEnabled(isOpen));
        comment.setEnabled(document().isPresent());
        sign.setEnabled(document().filter(document -> Reviews.threads(document.project()).stream().noneMatch(Reviews.Thread::isOpen))
                .isPresent());
    }

    /**
     * Keeps a comment, as the button does after asking for it.
     *
     * @param element id of the element, empty for the whole project
     * @param rule    id of the rule, empty for none
     * @param said    the words, who and when
     * @return why it cannot be kept; empty where it was
     */
    public Optional<String> comment(Optional<String> element, Optional<String> rule, Reviews.Said said) {
        return desk().orElseThrow().comment(element, rule, said);
    }

    /**
     * Says something to a comment, as the buttons do.
     *
     * @param id   id of the comment
     * @param kind an answer, a return or an acceptance
     * @param said the words, who and when
     * @return why it cannot be kept; empty where it was
     */
    public Optional<String> reply(String id, ReviewKind kind, Reviews.Said said) {
        return desk().orElseThrow().reply(id, kind, said);
    }

    /**
     * Signs the project off, as the button does.
     *
     * @param said what is said with it, who and when
     * @return why it cannot be; empty where it was
     */
    public Optional<String> signOff(Reviews.Said said) {
        return desk().orElseThrow().signOff(said);
    }

    /** Shows only what is open, or everything. */
    public void openOnly(boolean only) {
        tree.openOnly(only);
    }

    /** Selects a comment. */
    public void select(String id) {
        tree.select(id);
        selected();
    }

    /** Returns the line above the tree. */
    public String state() {
        return state.getText();
    }

    /** Returns the tree of notes. */
    public Tree tree() {
        return tree.control();
    }

    /** Returns what is shown, one note a line, its cells parted by tabs; replies begin with one. */
    public List<String> lines() {
        return Stream.of(tree.control().getItems()).flatMap(item -> Stream.concat(Stream.of(line(item)),
                Stream.of(item.getItems()).map(reply -> "\t" + line(reply)))).toList();
    }

    private static String line(TreeItem item) {
        return String.join("\t", Stream.iterate(0, i -> i < item.getParent().getColumnCount(), i -> i + 1).map(item::getText).toList());
    }

    @Override
    protected void focus() {
        tree.control().setFocus();
    }

    @Override
    public void dispose() {
        if (follower != null) {
            follower.dispose();
        }
        super.dispose();
    }
}
