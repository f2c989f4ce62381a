package slopewright.ui.review;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;

import slopewright.checks.CheckResult;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;
import slopewright.ui.AccessibleName;
import slopewright.ui.LateView;
import slopewright.ui.MessageTexts;
import slopewright.ui.document.DocumentFollower;
import slopewright.ui.document.DocumentListener;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.document.ProjectInput;
import slopewright.ui.review.internal.Messages;
import slopewright.ui.review.internal.SearchField;
import slopewright.ui.review.internal.versions.VersionRow;
import slopewright.ui.review.internal.versions.VersionTree;

/** What has changed since an older version of the project, element by element, and what that did to each result and outcome. */
public final class VersionsView extends LateView {

    /** Id of the view. */
    public static final String ID = "slopewright.ui.review.versions";

    private DocumentFollower follower;
    private CLabel state;
    private VersionTree tree;
    private Button saved;
    private Button choose;
    private Optional<Path> file = Optional.empty();
    private Optional<Job> job = Optional.empty();
    private int request;

    private final class Follow implements DocumentListener {

        @Override
        public void changed(Set<String> elementIds) {
            if (file.isPresent()) {
                state.setText(Messages.get("versions.working", file.get().getFileName()));
            }
        }

        @Override
        public void checked(CheckResult result) {
            compare();
        }

        @Override
        public void unchecked() {
            compare();
        }

        @Override
        public void stateChanged() {
            updateButtons();
        }
    }

    @Override
    protected void fill(Composite parent) {
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(parent);
        Composite head = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(head);
        GridLayoutFactory.fillDefaults().numColumns(4).margins(6, 2).applyTo(head);
        saved = button(head, "versions.saved");
        saved.addListener(SWT.Selection, event -> follower.document().flatMap(ProjectDocument::path).ifPresent(this::compareWith));
        choose = button(head, "versions.choose");
        choose.addListener(SWT.Selection, event -> chooseFile());
        state = new CLabel(head, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(60, SWT.DEFAULT).applyTo(state);
        Text search = new Text(head, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        SearchField.clearByEscape(search);
        search.setMessage(Messages.get("versions.search"));
        GridDataFactory.fillDefaults().hint(SearchField.width(search, 150), SWT.DEFAULT).align(SWT.FILL, SWT.CENTER).applyTo(search);
        tree = new VersionTree(parent);
        AccessibleName.give(tree.control(), getPartName());
        GridDataFactory.fillDefaults().grab(true, true).applyTo(tree.control());
        search.addListener(SWT.Modify, event -> tree.search(search.getText()));
        tree.control().addListener(SWT.DefaultSelection, event -> tree.selectedId().ifPresent(id -> follower.reveal(id)));
        follower = new DocumentFollower(getSite().getPage(), new Follow(), document -> switched());
        switched();
    }

    private static Button button(Composite parent, String key) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(Messages.get(key));
        button.setToolTipText(Messages.get(key + ".tip"));
        return button;
    }

    private void switched() {
        cancel();
        file = Optional.empty();
        if (tree != null && !tree.control().isDisposed()) {
            tree.show(List.of());
            state.setText(Messages.get("versions.none"));
            updateButtons();
        }
    }

    private void updateButtons() {
        if (follower != null && !saved.isDisposed()) {
            choose.setEnabled(follower.document().isPresent());
            saved.setEnabled(follower.document().flatMap(ProjectDocument::path).filter(Files::exists).isPresent());
        }
    }

    private void chooseFile() {
        FileDialog dialog = new FileDialog(getSite().getShell(), SWT.OPEN);
        dialog.setText(Messages.get("versions.choose.tip"));
        dialog.setFilterExtensions(new String[] {"*" + ProjectInput.FILE_SUFFIX});
        String name = dialog.open();
        if (name != null) {
            compareWith(Path.of(name));
        }
    }

    /**
     * Compares the project with an older version, and does so again after each check.
     *
     * @param older a project file
     */
    public void compareWith(Path older) {
        file = Optional.of(older);
        compare();
    }

    private void compare() {
        Optional<ProjectDocument> document = follower.document();
        if (document.isEmpty() || file.isEmpty() || state.isDisposed()) {
            return;
        }
        cancel();
        int mine = request;
        Path older = file.get();
        Project newer = ProjectFile.copy(document.get().project());
        Display display = state.getDisplay();
        state.setText(Messages.get("versions.working", older.getFileName()));
        Job work = Job.create(Messages.get("versions.job"), (IProgressMonitor monitor) -> {
            Runnable shown = compared(document.get(), older, newer);
            if (!display.isDisposed() && !monitor.isCanceled()) {
                display.asyncExec(() -> {
                    if (mine == request && !state.isDisposed()) {
                        shown.run();
                    }
                });
            }
            return Status.OK_STATUS;
        });
        work.setSystem(true);
        work.schedule();
        job = Optional.of(work);
    }

    private Runnable compared(ProjectDocument document, Path older, Project newer) {
        try {
            List<VersionRow> rows = VersionRow.between(document.evaluate(ProjectFile.load(older)), document.evaluate(newer));
            return () -> {
                tree.show(rows);
                long outcomes = rows.stream().filter(row -> row.outcome().isPresent()).count();
                state.setText(Messages.get("versions.found", rows.size() - outcomes, outcomes, older.getFileName()));
            };
        } catch (ProjectFileException | IllegalArgumentException e) {
            return () -> {
                tree.show(List.of());
                state.setText(MessageTexts.reason(e));
            };
        }
    }

    private void cancel() {
        request++;
        job.ifPresent(Job::cancel);
        job = Optional.empty();
    }

    /** Returns the tree of changes. */
    public Tree tree() {
        return tree.control();
    }

    /** Returns what differs as lines: element, what, before, after, parted by tabs. */
    public List<String> lines() {
        return tree.shown().stream().map(row -> String.join("\t", row.path(), row.what(), row.before(), row.after())).toList();
    }

    /** Returns the line above the tree. */
    public String state() {
        return state.getText();
    }

    @Override
    protected void focus() {
        tree.control().setFocus();
    }

    @Override
    public void dispose() {
        cancel();
        if (follower != null) {
            follower.dispose();
        }
        super.dispose();
    }
}
