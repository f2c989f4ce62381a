package slopewright.ui.properties;

import java.util.List;
import java.util.Optional;
import java.util.Set;

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
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.Widget;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.views.properties.IPropertySheetEntry;
import org.eclipse.ui.views.properties.IPropertySource;
import org.eclipse.ui.views.properties.PropertySheetEntry;
import org.eclipse.ui.views.properties.PropertySheetPage;
import org.eclipse.ui.views.properties.PropertySheetSorter;

import slopewright.checks.CheckResult;
import slopewright.model.Identified;
import slopewright.ui.document.DocumentListener;
import slopewright.ui.document.ProjectDocument;

/**
 * The property sheet of an editor: shows the selected element, in the order of the model, and follows edits, undo, redo and checks; below
 * it stands what the selected value means and where it comes from. The selection may hold elements, or anything that has one as its
 * adapter of the type {@link Identified}. An editor gives it as its adapter of the type
 * {@link org.eclipse.ui.views.properties.IPropertySheetPage}.
 */
public final class ElementPropertyPage extends PropertySheetPage {

    private static final int NAME_PERCENT = 60;
    private static final int WHY_HEIGHT = 76;

    private final Optional<ProjectDocument> document;
    private final List<SheetAction> sheetActions = SheetAction.all();
    private final ReadBackAction readBack = new ReadBackAction();
    private Optional<Identified> shown = Optional.empty();
    private Composite whole;
    private StyledText why;
    private final DocumentListener refresher = new DocumentListener() {

        @Override
        public void changed(Set<String> elementIds) {
            refreshShown();
        }

        @Override
        public void checked(CheckResult result) {
            refreshShown();
        }
    };

    /**
     * Makes the page of an editor.
     *
     * @param document the document of the editor
     */
    public ElementPropertyPage(ProjectDocument document) {
        this(Optional.of(document));
    }

    /** Makes the page of a view that follows several documents and calls {@link #refreshShown()} when theirs change. */
    public ElementPropertyPage() {
        this(Optional.empty());
    }

    private ElementPropertyPage(Optional<ProjectDocument> document) {
        this.document = document;
        PropertySheetEntry root = new PropertySheetEntry();
        root.setPropertySourceProvider(ElementPropertyPage::source);
        setRootEntry(root);
        setSorter(new PropertySheetSorter() {
            @Override
            public void sort(IPropertySheetEntry[] entries) {
                // the order of the model is the order in which people think
            }
        });
        document.ifPresent(opened -> opened.addListener(refresher));
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
            GridDataFactory.fillDefaults().grab(true, true).applyTo(tree);
            tree.addListener(SWT.Resize, event -> fit(tree));
            tree.addListener(SWT.Selection, event -> explain(event.item));
        }
        why = new StyledText(whole, SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL);
        why.setCaret(null);
        why.setMargins(6, 4, 6, 4);
        why.setAlwaysShowScrollBars(false);
        why.setText(PropertyTexts.get("sheet.hint"));
        why.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = PropertyTexts.get("sheet.why");
            }
        });
        GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, WHY_HEIGHT).applyTo(why);
    }

    private static void fit(Tree tree) {
        int width = tree.getClientArea().width;
        if (width > 0 && tree.getColumnCount() == 2) {
            tree.getColumn(0).setWidth(width * NAME_PERCENT / 100);
            tree.getColumn(1).setWidth(width - tree.getColumn(0).getWidth());
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
        sheetActions.stream().filter(SheetAction::isFrequent).forEach(bar::add);
        updateActions();
    }

    @Override
    public void selectionChanged(IWorkbenchPart part, ISelection selection) {
        super.selectionChanged(part, selection);
        Object first = selection instanceof IStructuredSelection structured ? structured.getFirstElement() : null;
        shown = Optional.ofNullable(first == null ? null : Adapters.adapt(first, Identified.class));
        updateActions();
    }

    private void updateActions() {
        sheetActions.forEach(action -> action.offer(shown));
        readBack.offer(shown);
    }

    /** Returns what can be added to the element that is shown, for menus of others and for tests. */
    public List<? extends IAction> actions() {
        return sheetActions;
    }

    private void explain(Widget item) {
        why.setText(item.getData() instanceof IPropertySheetEntry entry && entry.getDescription() != null
                ? entry.getDisplayName() + ": " + entry.getValueAsString() + "\n" + entry.getDescription()
                : PropertyTexts.get("sheet.hint"));
    }

    /** Returns what is said about the selected value. */
    public String why() {
        return why.getText();
    }

    /** Shows the values as they are now. */
    public void refreshShown() {
        if (getControl() != null && !getControl().isDisposed()) {
            refresh();
            updateActions();
        }
    }

    @Override
    public void dispose() {
        document.ifPresent(opened -> opened.removeListener(refresher));
        super.dispose();
    }
}
