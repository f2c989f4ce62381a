package slopewright.ui.properties;

import java.util.Optional;
import java.util.Set;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.views.properties.IPropertySource;
import org.eclipse.ui.views.properties.PropertySheetEntry;
import org.eclipse.ui.views.properties.PropertySheetPage;
import org.eclipse.ui.views.properties.PropertySheetSorter;
import org.eclipse.ui.views.properties.IPropertySheetEntry;

import slopewright.checks.CheckResult;
import slopewright.model.Identified;
import slopewright.ui.document.DocumentListener;
import slopewright.ui.document.ProjectDocument;

/**
 * The property sheet of an editor: shows the selected element, in the order of the model, and follows edits, undo, redo and checks. The
 * selection may hold elements, or anything that has one as its adapter of the type {@link Identified}. An editor gives it as its adapter
 * of the type {@link org.eclipse.ui.views.properties.IPropertySheetPage}.
 */
public final class ElementPropertyPage extends PropertySheetPage {

    private static final int NAME_PERCENT = 56;

    private final Optional<ProjectDocument> document;
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
        document.ifPresent(one -> one.addListener(refresher));
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
        super.createControl(parent);
        if (getControl() instanceof Tree tree) {
            tree.addListener(SWT.Resize, event -> {
                int width = tree.getClientArea().width;
                if (width > 0 && tree.getColumnCount() == 2) {
                    tree.getColumn(0).setWidth(width * NAME_PERCENT / 100);
                    tree.getColumn(1).setWidth(width - tree.getColumn(0).getWidth());
                }
            });
        }
    }

    /** Shows the values as they are now. */
    public void refreshShown() {
        if (getControl() != null && !getControl().isDisposed()) {
            refresh();
        }
    }

    @Override
    public void dispose() {
        document.ifPresent(one -> one.removeListener(refresher));
        super.dispose();
    }
}
