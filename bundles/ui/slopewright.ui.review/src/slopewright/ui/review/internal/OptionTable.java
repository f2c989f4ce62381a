package slopewright.ui.review.internal;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
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

import slopewright.checks.compare.Criterion;
import slopewright.ui.AccessibleName;
import slopewright.ui.theme.TypeScale;

/** The options as a table that every column sorts, and by a second click the other way round. */
public final class OptionTable {

    private static final int SCORE_WIDTH = 64;

    private final TableViewer viewer;
    private final Runnable sortedAnew;
    private OptionColumn sorted = OptionColumn.VERDICT;
    private boolean downward;
    private boolean byScore = true;
    private List<ComparedOption> all = List.of();
    private Map<Criterion, Integer> weights = Criterion.alike();

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
        AccessibleName.give(viewer.getTable(), Messages.get("comparison.table"));
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        addColumn(OptionColumn.NAME);
        addColumn(OptionColumn.VERDICT);
        addScore();
        Stream.of(OptionColumn.values()).skip(2).forEach(this::addColumn);
        viewer.setComparator(new ViewerComparator() {
            @Override
            public int compare(Viewer shown, Object first, Object second) {
                return (byScore ? bestFirst() : sorted.order(downward)).compare((ComparedOption) first, (ComparedOption) second);
            }
        });
        viewer.setInput(List.of());
    }

    private void addColumn(OptionColumn column) {
        TableViewerColumn made = new TableViewerColumn(viewer, column.isRight() ? SWT.RIGHT : SWT.LEFT);
        TableColumn widget = made.getColumn();
        widget.setText(column.title());
        widget.setWidth(Math.max(TypeScale.px(column.width()), TypeScale.headingPx(viewer.getTable(), column.title())));
        widget.setMoveable(true);
        made.setLabelProvider(ColumnLabelProvider.createTextProvider(element -> column.text((ComparedOption) element)));
        widget.addListener(SWT.Selection, event -> {
            downward = column == sorted && !downward;
            sorted = column;
            byScore = false;
            viewer.getTable().setSortColumn(widget);
            viewer.getTable().setSortDirection(downward ? SWT.DOWN : SWT.UP);
            viewer.refresh();
            sortedAnew.run();
        });
    }

    /** The column of the scores, which are of one option among all. */
    private void addScore() {
        TableViewerColumn made = new TableViewerColumn(viewer, SWT.RIGHT);
        TableColumn widget = made.getColumn();
        widget.setText(Messages.get("comparison.score"));
        widget.setToolTipText(Messages.get("comparison.score.tip"));
        widget.setWidth(TypeScale.px(SCORE_WIDTH));
        widget.setMoveable(true);
        made.setLabelProvider(ColumnLabelProvider.createTextProvider(element -> OptionSheet.score((ComparedOption) element, all, weights)));
        widget.addListener(SWT.Selection, event -> {
            byScore = true;
            viewer.getTable().setSortColumn(widget);
            viewer.getTable().setSortDirection(SWT.DOWN);
            viewer.refresh();
            sortedAnew.run();
        });
    }

    /** What fits before what does not, whatever the scores; among alike the best first. */
    private Comparator<ComparedOption> bestFirst() {
        List<Criterion.Weighed> others = all.stream().map(ComparedOption::weighed).toList();
        return Comparator.comparing(ComparedOption::weighed, Criterion.bestFirst(others, weights))
                .thenComparing(OptionColumn.NOT_MET.order(false));
    }

    /** Weighs the options by other weights. */
    public void weigh(Map<Criterion, Integer> newWeights) {
        weights = Map.copyOf(newWeights);
        viewer.refresh();
        sortedAnew.run();
    }

    /** Returns how much each criterion counts. */
    public Map<Criterion, Integer> weights() {
        return weights;
    }

    /** Shows options; the one of the same name stays selected. */
    public void show(List<ComparedOption> options) {
        all = List.copyOf(options);
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
