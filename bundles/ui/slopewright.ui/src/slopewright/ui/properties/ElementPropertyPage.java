package slopewright.ui.properties;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.swt.widgets.Widget;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.views.properties.IPropertySheetEntry;
import org.eclipse.ui.views.properties.IPropertySource;
import org.eclipse.ui.views.properties.PropertySheetEntry;
import org.eclipse.ui.views.properties.PropertySheetPage;
import org.eclipse.ui.views.properties.PropertySheetSorter;

import slopewright.checks.CheckResult;
import slopewright.model.Identified;
import slopewright.ui.AccessibleName;
import slopewright.ui.document.DocumentFollower;
import slopewright.ui.document.DocumentListener;
import slopewright.ui.document.ProjectDocument;

/**
 * The property sheet: shows the elements that are selected in the project of the active editor, whichever view has the focus, in the order
 * of the model, and follows edits, undo, redo and checks; below it stands what the selected value means and where it comes from. Every
 * editor and view has one as its adapter of the type {@link org.eclipse.ui.views.properties.IPropertySheetPage}; all show the same.
 */
public final class ElementPropertyPage extends PropertySheetPage {

    private static final int LEAST_NAME_PERCENT = 45;
    private static final int MOST_NAME_PERCENT = 74;
    private static final int BESIDE_NAME_PX = 10;
    private static final int WHY_HEIGHT = 76;
    /** How long an open cell is left alone before it is looked at again, milliseconds. */
    private static final int CELL_MS = 100;
    /** The name under which the tree knows whose it is. */
    private static final String PAGE = "page";

    private final Optional<DocumentFollower> follower;
    private Optional<ProjectDocument> document = Optional.empty();
    private final Runnable selectionListener = this::showSelection;
    private final List<SheetAction> sheetActions = SheetAction.all();
    private final ReadBackAction readBack = new ReadBackAction();
    private final TerrainAction terrain = new TerrainAction();
    private final EditionAction edition = new EditionAction();
    private List<Identified> shown = List.of();
    private final Runnable refreshing = this::refreshShown;
    private Composite whole;
    private StyledText why;
    private String refused = "";
    private boolean isRefusalSeen;
    private final DocumentListener refresher = new DocumentListener() {

        @Override
        public void changed(Set<String> elementIds) {
            if (elementIds.isEmpty()) {
                showAnew();
            }
            refreshShown();
        }

        @Override
        public void checked(CheckResult result) {
            refreshShown();
        }

        @Override
        public void unchecked() {
            refreshShown();
        }

        @Override
        public void stateChanged() {
            if (document.filter(ProjectDocument::isCheckStopped).isPresent()) {
                refreshShown();
            }
        }
    };

    /**
     * Makes the page of a document, whatever is active.
     *
     * @param document the document
     */
    public ElementPropertyPage(ProjectDocument document) {
        this(Optional.empty());
        switchTo(Optional.of(document));
    }

    /**
     * Makes the page of a view that belongs to whatever editor is active.
     *
     * @param page the page of the workbench
     */
    public ElementPropertyPage(IWorkbenchPage page) {
        this(Optional.of(page));
    }

    private ElementPropertyPage(Optional<IWorkbenchPage> page) {
        PropertySheetEntry root = new PropertySheetEntry();
        root.setPropertySourceProvider(ElementPropertyPage::source);
        setRootEntry(root);
        setSorter(new PropertySheetSorter() {
            @Override
            public void sort(IPropertySheetEntry[] entries) {
                // the order of the model is the order in which people think
            }
        });
        follower = page.map(followed -> new DocumentFollower(followed, new DocumentListener() {
            // the page listens to the document itself
        }, this::switchTo));
    }

    private void switchTo(Optional<ProjectDocument> opened) {
        forget();
        document = opened;
        document.ifPresent(now -> {
            now.addListener(refresher);
            now.viewState().addSelectionListener(selectionListener);
        });
        showSelection();
    }

    private void forget() {
        document.ifPresent(before -> {
            before.removeListener(refresher);
            before.viewState().removeSelectionListener(selectionListener);
        });
    }

    /** In other units the names of the rows are others too; the sheet keeps them as long as it shows the same elements. */
    private void showAnew() {
        if (whole != null && !whole.isDisposed()) {
            super.selectionChanged(null, StructuredSelection.EMPTY);
            showSelection();
        }
    }

    private void showSelection() {
        if (whole == null || whole.isDisposed()) {
            return;
        }
        List<Identified> elements = document.map(opened -> opened.viewState().selection()).orElse(List.of());
        boolean isOther = !elements.equals(shown);
        refused = isOther ? "" : refused;
        shown = elements;
        super.selectionChanged(null, new StructuredSelection(elements));
        fitShown();
        if (isOther && super.getControl() instanceof Tree tree && tree.getItemCount() > 0) {
            tree.setTopItem(tree.getItem(0)); // the toolkit goes on where it was in another element
        }
        updateActions();
        explainSelected();
    }

    private void fitShown() {
        if (super.getControl() instanceof Tree tree && !tree.isDisposed()) {
            fit(tree);
        }
    }

    /**
     * Returns what the property sheet shows for a selected object.
     *
     * @param selected an element, or something that has one as its adapter
     * @return the source, or null where there is no element
     */
    public static IPropertySource source(Object selected) {
        Identified element = Adapters.adapt(selected, Identified.class);
        return element == null ? Adapters.adapt(selected, IPropertySource.class) : new ElementPropertySource(element);
    }

    @Override
    public void createControl(Composite parent) {
        whole = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(whole);
        super.createControl(whole);
        if (super.getControl() instanceof Tree tree) {
            tree.setData(PAGE, this);
            AccessibleName.give(tree, PropertyTexts.get("sheet.name"));
            tree.getColumn(0).setText(PropertyTexts.get("sheet.column.property"));
            tree.getColumn(1).setText(PropertyTexts.get("sheet.column.value"));
            GridDataFactory.fillDefaults().grab(true, true).applyTo(tree);
            tree.addListener(SWT.Resize, event -> fit(tree));
            tree.addListener(SWT.Selection, event -> select(event.item));
            tree.addListener(SWT.Expand, event -> tree.getDisplay().asyncExec(() -> fitShown()));
            tree.addListener(SWT.MouseMove, event -> tellCutName(tree, new Point(event.x, event.y)));
        }
        why = new StyledText(whole, SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL);
        why.setCaret(null);
        why.setMargins(6, 4, 6, 4);
        why.setAlwaysShowScrollBars(false);
        why.setText(PropertyTexts.get("sheet.hint"));
        AccessibleName.give(why, PropertyTexts.get("sheet.why"));
        GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, WHY_HEIGHT).applyTo(why);
        whole.addListener(SWT.Show, event -> showSelection());
        showSelection();
    }

    /** Gives the names the room that they need and the values the rest, which is never less than their share. */
    private static void fit(Tree tree) {
        int width = tree.getClientArea().width;
        if (width > 0 && tree.getColumnCount() == 2) {
            GC gc = new GC(tree);
            int names = Stream.of(tree.getItems()).mapToInt(item -> needs(gc, item)).max().orElse(0);
            gc.dispose();
            int first = Math.max(width * LEAST_NAME_PERCENT / 100, Math.min(names, width * MOST_NAME_PERCENT / 100));
            if (first != tree.getColumn(0).getWidth() || width - first != tree.getColumn(1).getWidth()) {
                tree.getColumn(0).setWidth(first);
                tree.getColumn(1).setWidth(width - first);
            }
        }
    }

    private static int needs(GC gc, TreeItem item) {
        int own = item.getBounds(0).x - item.getParent().getClientArea().x + gc.textExtent(item.getText(0)).x + BESIDE_NAME_PX;
        return item.getExpanded() ? Stream.of(item.getItems()).mapToInt(child -> needs(gc, child)).reduce(own, Math::max) : own;
    }

    /** A name that is wider than its column is told whole where the mouse points at it. */
    private static void tellCutName(Tree tree, Point at) {
        TreeItem item = tree.getItem(at);
        String cut = null;
        if (item != null && at.x < tree.getColumn(0).getWidth()) {
            GC gc = new GC(tree);
            cut = needs(gc, item) - BESIDE_NAME_PX > tree.getColumn(0).getWidth() ? item.getText(0) : null;
            gc.dispose();
        }
        if (!Objects.equals(cut, tree.getToolTipText())) {
            tree.setToolTipText(cut);
        }
    }

    @Override
    public Control getControl() {
        return whole;
    }

    @Override
    public void makeContributions(IMenuManager menu, IToolBarManager bar, IStatusLineManager status) {
        super.makeContributions(menu, bar, status);
        menu.add(new Separator());
        sheetActions.forEach(menu::add);
        menu.add(readBack);
        menu.add(terrain);
        menu.add(edition);
        sheetActions.stream().filter(SheetAction::isFrequent).forEach(bar::add);
        updateActions();
    }

    /** What is selected anywhere is selected everywhere; a view that selects no element leaves what was selected. */
    @Override
    public void selectionChanged(IWorkbenchPart part, ISelection selection) {
        if (selection instanceof IStructuredSelection structured) {
            List<Identified> elements = new ArrayList<>();
            for (Object selected : structured.toList()) {
                Optional.ofNullable(Adapters.adapt(selected, Identified.class)).ifPresent(elements::add);
            }
            document.ifPresent(opened -> opened.viewState().select(elements));
        }
    }

    private void updateActions() {
        sheetActions.forEach(action -> action.offer(shown.stream().findFirst()));
        readBack.offer(shown.stream().findFirst());
        terrain.offer(shown.stream().findFirst());
        edition.offer(shown.stream().findFirst());
    }

    /** Returns what can be added to the element that is shown, for menus of others and for tests. */
    public List<? extends IAction> actions() {
        return Stream.concat(sheetActions.stream(), Stream.of(readBack, terrain, edition)).toList();
    }

    /** Says what was typed into a cell of a sheet and left there although it cannot be taken. */
    static void refused(Composite sheet, String typed, String reason) {
        if (sheet.getData(PAGE) instanceof ElementPropertyPage page) {
            page.refused = PropertyTexts.get("sheet.refused", typed, reason) + "\n";
            page.isRefusalSeen = false;
            page.explainSelected();
        }
    }

    /** What was not taken stays said when the cell is left for another one, and until the next. */
    private void select(Widget item) {
        refused = isRefusalSeen ? "" : refused;
        isRefusalSeen = true;
        explain(item);
    }

    private void explain(Widget item) {
        why.setText(refused + (item != null && item.getData() instanceof IPropertySheetEntry entry && entry.getDescription() != null
                ? entry.getDisplayName() + ": " + entry.getValueAsString() + "\n" + entry.getDescription()
                : PropertyTexts.get("sheet.hint")));
    }

    private void explainSelected() {
        if (super.getControl() instanceof Tree tree && why != null) {
            explain(tree.getSelectionCount() == 0 ? null : tree.getSelection()[0]);
        }
    }

    /** Returns what is said about the selected value. */
    public String why() {
        return why.getText();
    }

    /** Shows the values as they are now; where a cell is open, once it is closed, for what is typed there would be dropped. */
    public void refreshShown() {
        if (whole != null && !whole.isDisposed() && whole.isVisible()) {
            if (document.isPresent() && !document.get().viewState().selection().equals(shown)) {
                showSelection();
            } else if (isCellOpen()) {
                whole.getDisplay().timerExec(CELL_MS, refreshing);
            } else {
                refresh();
                updateActions();
                explainSelected();
            }
        }
    }

    private boolean isCellOpen() {
        return super.getControl() instanceof Tree tree && Stream.of(tree.getChildren()).anyMatch(Control::isVisible);
    }

    @Override
    public void dispose() {
        forget();
        follower.ifPresent(DocumentFollower::dispose);
        super.dispose();
    }
}
