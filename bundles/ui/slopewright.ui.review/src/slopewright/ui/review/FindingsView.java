package slopewright.ui.review;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.Tree;

import slopewright.checks.BookKeeping;
import slopewright.checks.CheckResult;
import slopewright.checks.Outcome;
import slopewright.checks.RestingValues;
import slopewright.edit.Compound;
import slopewright.edit.ConfirmValue;
import slopewright.edit.EditException;
import slopewright.edit.RecordedEdit;
import slopewright.evaluation.BookUse;
import slopewright.model.Project;
import slopewright.siting.SitingException;
import slopewright.standards.ValueBook;
import slopewright.ui.Images;
import slopewright.ui.LateView;
import slopewright.ui.MessageTexts;
import slopewright.ui.document.DocumentFollower;
import slopewright.ui.document.DocumentListener;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.properties.Field;
import slopewright.ui.properties.OutcomeTexts;
import slopewright.ui.review.internal.ElementSelection;
import slopewright.ui.review.internal.FindingDetails;
import slopewright.ui.review.internal.FindingsActions;
import slopewright.ui.review.internal.FindingsCopy;
import slopewright.ui.review.internal.FindingsHead;
import slopewright.ui.review.internal.FindingsText;
import slopewright.ui.review.internal.FindingsTree;
import slopewright.ui.review.internal.Messages;
import slopewright.ui.review.internal.TriedFix;
import slopewright.ui.review.internal.book.ValueDialog;
import slopewright.ui.review.internal.notes.NoteDesk;
import slopewright.ui.review.internal.notes.NoteTexts;

/**
 * What the rules say about the project in the active editor: follows it live, in groups or as a list, explains each finding with its
 * numbers, jumps to its element, and offers the remedies that cure it, each with what it would change.
 */
public final class FindingsView extends LateView {

    /** Id of the view. */
    public static final String ID = "slopewright.ui.review.findings";

    private static final double WIDE = 2.2;

    private DocumentFollower follower;
    private FindingsHead head;
    private FindingsTree table;
    private FindingDetails details;
    private FindingsActions actions;

    private final class Follow implements DocumentListener {

        @Override
        public void checked(CheckResult result) {
            table.show(Optional.of(result));
        }

        @Override
        public void unchecked() {
            table.show(Optional.empty());
        }

        @Override
        public void stateChanged() {
            updateState();
        }
    }

    private final class DetailActions implements FindingDetails.Actions {

        @Override
        public void apply(TriedFix cure) {
            applyFix(cure);
        }

        @Override
        public void confirm(Outcome outcome) {
            confirmValue(outcome);
        }

        @Override
        public Optional<String> fill(Field field, String typed) {
            try {
                follower.document().ifPresent(document -> document.history().perform(field.editOf(typed)));
                return Optional.empty();
            } catch (IllegalArgumentException e) {
                return Optional.of(String.valueOf(e.getMessage()));
            }
        }
    }

    @Override
    protected void fill(Composite parent) {
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(parent);
        Composite top = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(top);
        GridLayoutFactory.fillDefaults().applyTo(top);
        SashForm sash = new SashForm(parent, SWT.HORIZONTAL | SWT.SMOOTH);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
        table = new FindingsTree(sash);
        head = new FindingsHead(top, table, () -> follower.document().ifPresent(FindingsView::takeSaved));
        details = new FindingDetails(sash, new DetailActions());
        sash.setWeights(66, 34);
        sash.addListener(SWT.Resize, event -> orient(sash));
        table.remark(this::mark);
        table.onSelection(this::updateDetails);
        table.control().addListener(SWT.DefaultSelection, event -> revealSelected());
        getSite().setSelectionProvider(new ElementSelection(table, this::project));
        actions = new FindingsActions(table, getViewSite().getActionBars(), getSite().getShell());
        createMenu();
        follower = new DocumentFollower(getSite().getPage(), new Follow(), document -> documentSwitched());
        documentSwitched();
    }

    private static void orient(SashForm sash) {
        Point size = sash.getSize();
        int wanted = size.x > WIDE * size.y ? SWT.HORIZONTAL : SWT.VERTICAL;
        if (sash.getOrientation() != wanted) {
            sash.setOrientation(wanted);
        }
    }

    private void createMenu() {
        MenuManager manager = new MenuManager();
        manager.setRemoveAllWhenShown(true);
        manager.addMenuListener(this::fillMenu);
        Menu menu = manager.createContextMenu(table.control());
        table.control().setMenu(menu);
    }

    private void fillMenu(IMenuManager menu) {
        if (table.selected().isEmpty()) {
            return;
        }
        menu.add(FindingsActions.action("findings.reveal", this::revealSelected));
        menu.add(new Separator());
        details.cures().forEach(cure -> menu.add(fix(cure)));
        table.single().filter(Outcome::toConfirm)
                .ifPresent(outcome -> menu.add(FindingsActions.action("details.confirm", () -> confirmValue(outcome))));
        menu.add(new Separator());
        selected().ifPresent(outcome -> menu.add(FindingsActions.action("notes.comment", () -> comment(outcome))));
        menu.add(FindingsActions.action("findings.copy", actions::copy));
    }

    private void comment(Outcome outcome) {
        follower.document().ifPresent(document -> new NoteDesk(document).askComment(getSite().getShell(),
                Optional.ofNullable(outcome.elementId()), Optional.of(outcome.rule())));
    }

    private String mark(Outcome outcome) {
        return project().map(project -> NoteTexts.mark(project, outcome)).orElse("");
    }

    /** Returns the finding that is selected, empty where none or several are. */
    public Optional<Outcome> selected() {
        return table.single();
    }

    private IAction fix(TriedFix cure) {
        IAction fix = new Action(cure.text().replace("@", " ")) {
            @Override
            public void run() {
                details.preview(cure);
            }
        };
        fix.setImageDescriptor(Images.FIX.descriptor());
        return fix;
    }

    /** Returns the tree of outcomes. */
    public Tree tree() {
        return table.control();
    }

    /** Returns the outcomes that are shown, in the order of the rows. */
    public List<Outcome> rows() {
        return table.shown();
    }

    /** Selects the row of an outcome. */
    public void select(Outcome outcome) {
        table.select(List.of(outcome));
    }

    /** Returns what copying takes: the selected outcomes or all, columns parted by tabs. */
    public String copied() {
        return FindingsText.tabs(actions.chosen());
    }

    /**
     * Writes the outcomes that are shown into a file.
     *
     * @param file a file whose name ends in {@code .csv}, {@code .html} or {@code .txt}
     * @return what there is to say about it
     */
    public String export(Path file) {
        return FindingsCopy.write(table.shown(), file);
    }

    /** Returns the line above the table. */
    public String summary() {
        return head.summary();
    }

    /** Returns the explanation beside the table, with the preview of a remedy where one is open. */
    public String explanation() {
        return details.text();
    }

    /** Returns what can be filled in beside the explanation of the selected finding. */
    public List<String> missingEntries() {
        return details.entries();
    }

    /** Returns the remedies that cure the selected finding, as they are offered; empty while they are looked for. */
    public List<String> remedies() {
        return details.cures().stream().map(TriedFix::text).toList();
    }

    /** Applies one of the {@link #remedies()}. */
    public void applyRemedy(int index) {
        applyFix(details.cures().get(index));
    }

    /** Shows what one of the {@link #remedies()} would change, with a button that applies it. */
    public void previewRemedy(int index) {
        details.preview(details.cures().get(index));
    }

    private void documentSwitched() {
        table.select(List.of());
        table.show(follower == null ? Optional.empty() : follower.document().flatMap(ProjectDocument::lastResult));
        updateState();
    }

    private void updateState() {
        if (follower == null) {
            return;
        }
        Optional<ProjectDocument> document = follower.document();
        head.say(document.map(FindingsView::state).orElse(Messages.get("findings.noProject")));
        head.offerSaved(document.filter(FindingsView::isAsRestored).map(ProjectDocument::restoredWorks).orElse(0));
    }

    private static boolean isAsRestored(ProjectDocument document) {
        return document.restoredWorks() > 0 && ProjectDocument.RESTORE.equals(document.history().undoLabel());
    }

    /** Takes back the work of each window that was restored, until the project is as it was saved. */
    private static void takeSaved(ProjectDocument document) {
        while (isAsRestored(document)) {
            document.history().undo();
        }
    }

    private static String state(ProjectDocument document) {
        String checking = document.isChecking() ? "  ·  " + Messages.get("findings.checking") : "";
        if (document.checkProblem().isPresent()) {
            return Messages.get("findings.problem", document.checkProblem().get()) + checking;
        }
        String stopped = document.isCheckStopped() ? "  ·  " + Messages.get("findings.stopped") : "";
        return document.lastResult().map(FindingsView::counts).orElse(Messages.get("findings.unchecked")) + checking + stopped;
    }

    private static String counts(CheckResult result) {
        if (!result.anythingEvaluated()) {
            return Messages.get("findings.nothing");
        }
        return Messages.get("findings.counts", OutcomeTexts.counts(result.counts()), MessageTexts.of(result.rules().descriptor().name()),
                result.rules().edition());
    }

    private void updateDetails() {
        Optional<Outcome> selected = table.single().or(table::followed);
        project().ifPresent(project -> ProjectDocument.of(project)
                .ifPresent(document -> document.viewState().select(ElementSelection.elements(table, project))));
        List<Outcome> several = table.several();
        if (details != null && !several.isEmpty() && follower.document().isPresent()) {
            details.showSeveral(several, follower.document().get());
        } else if (details != null && selected.isPresent() && follower.document().isPresent()) {
            details.show(selected.get(), follower.document().get());
        } else if (details != null) {
            details.clear(Messages.get("details.none"));
        }
    }

    private Optional<Project> project() {
        return follower == null ? Optional.empty() : follower.document().map(ProjectDocument::project);
    }

    private void revealSelected() {
        table.selected().stream().findFirst().ifPresent(outcome -> follower.reveal(outcome.elementId()));
    }

    private void applyFix(TriedFix cure) {
        follower.document().ifPresent(document -> {
            try {
                document.history().perform(cure.fix().edit(document.evaluation()));
            } catch (EditException | SitingException | IllegalArgumentException e) {
                getViewSite().getActionBars().getStatusLineManager().setErrorMessage(MessageTexts.reason(e));
            }
        });
    }

    /** Asks for every value that an outcome waits for, one after the other, and keeps what was read. */
    private void confirmValue(Outcome outcome) {
        Optional<ProjectDocument> document = follower.document();
        if (document.isEmpty()) {
            return;
        }
        List<Outcome> outcomes = document.get().lastResult().map(CheckResult::outcomes).orElse(List.of());
        List<ValueBook.Entry> open = RestingValues.of(document.get().evaluation(), outcomes).stream()
                .filter(value -> value.outcomes().contains(outcome))
                .filter(value -> outcome.citations().stream().anyMatch(citation -> citation.toConfirm()
                        && citation.key().equals(value.key()))).map(BookKeeping::entry).toList();
        if (open.isEmpty()) {
            getViewSite().getActionBars().getStatusLineManager().setErrorMessage(Messages.get("value.none"));
            return;
        }
        ValueDialog dialog = new ValueDialog(getSite().getShell(), open, true, Optional.empty());
        if (dialog.open() == Window.OK) {
            document.get().history().perform(Compound.of(Messages.get("edit.confirm"), dialog.decided().stream()
                    .map(entry -> (RecordedEdit) ConfirmValue.of(document.get().project(), BookUse.confirmation(entry))).toList()));
        }
    }

    @Override
    protected void focus() {
        table.control().setFocus();
    }

    @Override
    public void dispose() {
        if (follower != null) {
            follower.dispose();
        }
        super.dispose();
    }
}
