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

/** The options as a table that every column sorts, and by a second click the other way round. */
public final class OptionTable {

    private final TableViewer viewer;
    private final Runnable sortedAnew;
    private OptionColumn sorted = OptionColumn.NOT_MET;
    private boolean downward;

    /**
     * Makes the table.
     *
     * @param parent     where it goes
     * @param sortedAnew run after the order has changed
     */
    public OptionTable(Composite parent, Runnable sortedAnew) {
        this.sortedAnew = sortedAnew;
        viewer = new TableViewer(parent, SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL);
        viewer.getTable().setHeaderVisible(true);
        viewer.getTable().getAccessible().addAccessibleListener(AccessibleName.of(Messages.get("comparison.table")));
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        Stream.of(OptionColumn.values()).forEach(this::addColumn);
        viewer.setComparator(new ViewerComparator() {
            @Override
            public int compare(Viewer shown, Object first, Object second) {
                return sorted.order(downward).compare((ComparedOption) first, (ComparedOption) second);
            }
        });
        viewer.setInput(List.of());
    }

    private void addColumn(OptionColumn column) {
        TableViewerColumn made = new TableViewerColumn(viewer, column.isRight() ? SWT.RIGHT : SWT.LEFT);
        TableColumn widget = made.getColumn();
        widget.setText(column.title());
        widget.setWidth(column.width());
        widget.setMoveable(true);
        made.setLabelProvider(ColumnLabelProvider.createTextProvider(element -> column.text((ComparedOption) element)));
        widget.addListener(SWT.Selection, event -> {
            downward = column == sorted && !downward;
            sorted = column;
            viewer.getTable().setSortColumn(widget);
            viewer.getTable().setSortDirection(downward ? SWT.DOWN : SWT.UP);
            viewer.refresh();
            sortedAnew.run();
        });
    }

    /** Shows options; the one of the same name stays selected. */
    public void show(List<ComparedOption> options) {
        Optional<String> before = selected().map(ComparedOption::name);
        viewer.setInput(options);
        options.stream().filter(option -> before.filter(option.name()::equals).isPresent()).findFirst()
                .ifPresent(option -> viewer.setSelection(new StructuredSelection(option)));
    }

    /** Returns what is shown, in the order of the rows. */
    public List<ComparedOption> shown() {
        return Stream.of(viewer.getTable().getItems()).map(Item::getData).map(ComparedOption.class::cast).toList();
    }

    /** Returns the selected option. */
    public Optional<ComparedOption> selected() {
        return Optional.ofNullable((ComparedOption) viewer.getStructuredSelection().getFirstElement());
    }

    /** Returns the viewer. */
    public TableViewer viewer() {
        return viewer;
    }
}
