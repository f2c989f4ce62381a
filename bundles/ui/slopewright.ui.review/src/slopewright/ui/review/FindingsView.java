package slopewright.ui.review;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.part.ViewPart;
import org.eclipse.ui.views.properties.IPropertySheetPage;

import slopewright.checks.CheckResult;
import slopewright.checks.Outcome;
import slopewright.checks.Severity;
import slopewright.checks.Verdict;
import slopewright.edit.AddChild;
import slopewright.edit.EditException;
import slopewright.model.Project;
import slopewright.model.SlopewrightPackage;
import slopewright.siting.SitingException;
import slopewright.ui.Images;
import slopewright.ui.document.DocumentFollower;
import slopewright.ui.document.DocumentListener;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.properties.ElementPropertyPage;
import slopewright.ui.review.internal.ConfirmDialog;
import slopewright.ui.review.internal.ElementSelection;
import slopewright.ui.review.internal.FindingDetails;
import slopewright.ui.review.internal.FindingsTable;
import slopewright.ui.review.internal.FixTrial.Cure;

/**
 * What the rules say about the project in the active editor: follows it live, explains each finding, jumps to its element, and offers
 * the remedies that cure it.
 */
public final class FindingsView extends ViewPart {

    /** Id of the view. */
    public static final String ID = "slopewright.ui.review.findings";

    private static final double WIDE = 2.2;

    private DocumentFollower follower;
    private Label summary;
    private Link restored;
    private FindingsTable table;
    private FindingDetails details;
    private Optional<ElementPropertyPage> properties = Optional.empty();

    private final class Follow implements DocumentListener {

        @Override
        public void changed(Set<String> elementIds) {
            properties.ifPresent(ElementPropertyPage::refreshShown);
        }

        @Override
        public void checked(CheckResult result) {
            table.show(Optional.of(result));
            updateDetails();
            properties.ifPresent(ElementPropertyPage::refreshShown);
        }

        @Override
        public void stateChanged() {
            updateState();
        }
    }

    private final class DetailActions implements FindingDetails.Actions {

        @Override
        public void apply(Cure cure) {
            applyFix(cure);
        }

        @Override
        public void confirm(Outcome outcome) {
            confirmValue(outcome);
        }
    }

    @Override
    public void createPartControl(Composite parent) {
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(parent);
        createHead(parent);
        SashForm sash = new SashForm(parent, SWT.HORIZONTAL | SWT.SMOOTH);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
        table = new FindingsTable(sash);
        details = new FindingDetails(sash, new DetailActions());
        sash.setWeights(68, 32);
        sash.addListener(SWT.Resize, event -> orient(sash));
        table.viewer().addSelectionChangedListener(event -> updateDetails());
        table.viewer().addDoubleClickListener(event -> revealSelected());
        getSite().setSelectionProvider(new ElementSelection(table, this::project));
        createActions();
        follower = new DocumentFollower(getSite().getPage(), new Follow(), document -> documentSwitched());
        documentSwitched();
    }

    private void createHead(Composite parent) {
        Composite head = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(head);
        GridLayoutFactory.fillDefaults().numColumns(3).margins(6, 2).applyTo(head);
        summary = new Label(head, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(summary);
        restored = new Link(head, SWT.NONE);
        restored.setText("Unsaved work of the last run was brought back. <a>Use the saved file instead</a>");
        restored.addListener(SWT.Selection, event -> follower.document().ifPresent(document -> document.history().undo()));
        GridDataFactory.fillDefaults().exclude(true).align(SWT.FILL, SWT.CENTER).applyTo(restored);
        restored.setVisible(false);
        Text search = new Text(head, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        search.setMessage("Rule, element or clause");
        search.setToolTipText("Show only rows that contain these words");
        search.addListener(SWT.Modify, event -> table.search(search.getText()));
        GridDataFactory.fillDefaults().hint(200, SWT.DEFAULT).applyTo(search);
    }

    private static void orient(SashForm sash) {
        Point size = sash.getSize();
        int wanted = size.x > WIDE * size.y ? SWT.HORIZONTAL : SWT.VERTICAL;
        if (sash.getOrientation() != wanted) {
            sash.setOrientation(wanted);
        }
    }

    private void createActions() {
        IAction all = new Action("All outcomes", IAction.AS_CHECK_BOX) {
            @Override
            public void run() {
                table.showAll(isChecked());
            }
        };
        all.setToolTipText("Show rules that are met or do not apply too");
        all.setImageDescriptor(Images.ALL.descriptor());
        getViewSite().getActionBars().getToolBarManager().add(all);
        getViewSite().getActionBars().getMenuManager().add(all);
        getViewSite().getActionBars().setGlobalActionHandler(ActionFactory.COPY.getId(), action("Copy", this::copy));
        MenuManager manager = new MenuManager();
        manager.setRemoveAllWhenShown(true);
        manager.addMenuListener(this::fillMenu);
        Menu menu = manager.createContextMenu(table.viewer().getControl());
        table.viewer().getControl().setMenu(menu);
    }

    private static IAction action(String text, Runnable work) {
        return new Action(text) {
            @Override
            public void run() {
                work.run();
            }
        };
    }

    private void fillMenu(IMenuManager menu) {
        List<Outcome> selected = table.selected();
        if (selected.isEmpty()) {
            return;
        }
        menu.add(action("Go to the element", this::revealSelected));
        menu.add(new Separator());
        details.cures().forEach(cure -> menu.add(fix(cure)));
        if (selected.size() == 1 && selected.get(0).toConfirm()) {
            menu.add(action("Confirm the value…", () -> confirmValue(selected.get(0))));
        }
        menu.add(new Separator());
        menu.add(action("Copy as text", this::copy));
    }

    private IAction fix(Cure cure) {
        IAction fix = action(cure.text(), () -> applyFix(cure));
        fix.setImageDescriptor(Images.FIX.descriptor());
        return fix;
    }

    /** Returns the table of outcomes; its elements are {@link Outcome}s. */
    public TableViewer viewer() {
        return table.viewer();
    }

    /** Returns the line above the table. */
    public String summary() {
        return summary.getText();
    }

    /** Returns the explanation beside the table. */
    public String explanation() {
        return details.text();
    }

    /** Returns the remedies that cure the selected finding, as they are offered; empty while they are looked for. */
    public List<String> remedies() {
        return details.cures().stream().map(Cure::text).toList();
    }

    /** Applies one of the {@link #remedies()}. */
    public void applyRemedy(int index) {
        applyFix(details.cures().get(index));
    }

    /** Shows every outcome, or findings only. */
    public void showAll(boolean every) {
        table.showAll(every);
    }

    private void documentSwitched() {
        table.show(follower == null ? Optional.empty() : follower.document().flatMap(ProjectDocument::lastResult));
        updateDetails();
        updateState();
    }

    private void updateState() {
        if (follower == null) {
            return;
        }
        Optional<ProjectDocument> document = follower.document();
        summary.setText(document.map(FindingsView::state).orElse("Open a project to see what the rules say about it."));
        boolean isRestored = document.filter(ProjectDocument::isRestored).map(one -> one.history().undoLabel())
                .filter(ProjectDocument.RESTORE::equals).isPresent();
        if (restored.getVisible() != isRestored) {
            restored.setVisible(isRestored);
            GridDataFactory.fillDefaults().exclude(!isRestored).align(SWT.FILL, SWT.CENTER).applyTo(restored);
            restored.getParent().layout();
        }
    }

    private static String state(ProjectDocument document) {
        String checking = document.isChecking() ? "  ·  checking…" : "";
        if (document.checkProblem().isPresent()) {
            return "The project can not be checked: " + document.checkProblem().get() + checking;
        }
        return document.lastResult().map(FindingsView::counts).orElse("Not checked yet") + checking;
    }

    private static String counts(CheckResult result) {
        if (!result.anythingEvaluated()) {
            return "No rule could be evaluated; nothing may be concluded.";
        }
        Map<Severity, Long> weights = result.outcomes().stream().flatMap(outcome -> outcome.weight().stream())
                .collect(Collectors.groupingBy(weight -> weight, Collectors.counting()));
        return String.join("  ·  ", weights.getOrDefault(Severity.FAIL, 0L) + " not met",
                weights.getOrDefault(Severity.WARNING, 0L) + " to clear up", weights.getOrDefault(Severity.NOTE, 0L) + " notes",
                result.counts().get(Verdict.PASS) + " met", result.rules().descriptor().name() + " (" + result.rules().edition() + ")");
    }

    private void updateDetails() {
        List<Outcome> selected = table.selected();
        if (selected.size() == 1 && project().isPresent()) {
            details.show(selected.get(0), project().get());
        } else {
            details.clear("Select a finding to see how it came about and what to do.");
        }
    }

    private Optional<Project> project() {
        return follower == null ? Optional.empty() : follower.document().map(ProjectDocument::project);
    }

    private void revealSelected() {
        table.selected().stream().findFirst().ifPresent(outcome -> follower.reveal(outcome.elementId()));
    }

    private void applyFix(Cure cure) {
        follower.document().ifPresent(document -> {
            try {
                document.history().perform(cure.fix().edit(document.project()));
            } catch (EditException | SitingException | IllegalArgumentException e) {
                getViewSite().getActionBars().getStatusLineManager().setErrorMessage(e.getMessage());
            }
        });
    }

    private void confirmValue(Outcome outcome) {
        Optional<ProjectDocument> document = follower.document();
        if (document.isEmpty() || outcome.citation().isEmpty()) {
            return;
        }
        ConfirmDialog dialog = new ConfirmDialog(getSite().getShell(), outcome.citation().get(), document.get().rules().key());
        if (dialog.open() == Window.OK) {
            document.get().history().perform(AddChild.of(document.get().project(), SlopewrightPackage.Literals.PROJECT__CONFIRMATIONS,
                    dialog.confirmation()));
        }
    }

    private void copy() {
        List<Outcome> selected = table.selected();
        if (!selected.isEmpty()) {
            Clipboard clipboard = new Clipboard(getSite().getShell().getDisplay());
            clipboard.setContents(new Object[] {selected.stream().map(FindingsTable::line).collect(Collectors.joining("\n"))},
                    new Transfer[] {TextTransfer.getInstance()});
            clipboard.dispose();
        }
    }

    @Override
    public <T> T getAdapter(Class<T> type) {
        if (type == IPropertySheetPage.class) {
            properties = Optional.of(new ElementPropertyPage());
            return type.cast(properties.get());
        }
        return super.getAdapter(type);
    }

    @Override
    public void setFocus() {
        table.viewer().getControl().setFocus();
    }

    @Override
    public void dispose() {
        if (follower != null) {
            follower.dispose();
        }
        super.dispose();
    }
}
