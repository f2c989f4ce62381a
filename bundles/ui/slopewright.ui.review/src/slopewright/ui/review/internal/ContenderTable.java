package slopewright.ui.review.internal;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.jface.viewers.Viewer;
import org.eclipse.jface.viewers.ViewerComparator;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Item;
import org.eclipse.swt.widgets.TableColumn;

/** The contenders as a table that every column sorts, and by a second click the other way round. */
public final class ContenderTable {

    private final TableViewer viewer;
    private final Runnable sortedAnew;
    private ContenderColumn sorted = ContenderColumn.FAILURES;
    private boolean downward;

    /**
     * Makes the table.
     *
     * @param parent     where it goes
     * @param sortedAnew run after the order has changed
     */
    public ContenderTable(Composite parent, Runnable sortedAnew) {
        this.sortedAnew = sortedAnew;
        viewer = new TableViewer(parent, SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL);
        viewer.getTable().setHeaderVisible(true);
        viewer.getTable().getAccessible().addAccessibleListener(AccessibleName.of(Messages.get("comparison.table")));
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        Stream.of(ContenderColumn.values()).forEach(this::addColumn);
        viewer.setComparator(new ViewerComparator() {
            @Override
            public int compare(Viewer shown, Object one, Object other) {
                return sorted.order(downward).compare((Contender) one, (Contender) other);
            }
        });
        viewer.setInput(List.of());
    }

    private void addColumn(ContenderColumn column) {
        TableViewerColumn made = new TableViewerColumn(viewer, column.isRight() ? SWT.RIGHT : SWT.LEFT);
        TableColumn widget = made.getColumn();
        widget.setText(column.title());
        widget.setWidth(column.width());
        widget.setMoveable(true);
        made.setLabelProvider(ColumnLabelProvider.createTextProvider(element -> column.text((Contender) element)));
        widget.addListener(SWT.Selection, event -> {
            downward = column == sorted && !downward;
            sorted = column;
            viewer.getTable().setSortColumn(widget);
            viewer.getTable().setSortDirection(downward ? SWT.DOWN : SWT.UP);
            viewer.refresh();
            sortedAnew.run();
        });
    }

    /** Shows contenders; the one of the same name stays selected. */
    public void show(List<Contender> contenders) {
        Optional<String> before = selected().map(Contender::name);
        viewer.setInput(contenders);
        contenders.stream().filter(one -> before.filter(one.name()::equals).isPresent()).findFirst()
                .ifPresent(one -> viewer.setSelection(new StructuredSelection(one)));
    }

    /** Returns what is shown, in the order of the rows. */
    public List<Contender> shown() {
        return Stream.of(viewer.getTable().getItems()).map(Item::getData).map(Contender.class::cast).toList();
    }

    /** Returns the selected contender. */
    public Optional<Contender> selected() {
        return Optional.ofNullable((Contender) viewer.getStructuredSelection().getFirstElement());
    }

    /** Returns the viewer. */
    public TableViewer viewer() {
        return viewer;
    }
}
