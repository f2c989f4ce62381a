package slopewright.ui.review.internal;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.jface.viewers.Viewer;
import org.eclipse.jface.viewers.ViewerComparator;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Item;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;

import slopewright.checks.compare.Criterion;
import slopewright.ui.AccessibleName;
import slopewright.ui.theme.TypeScale;

/** The options as a table that every column sorts, and by a second click the other way round. */
public final class OptionTable {

    private static final int SCORE_WIDTH = 64;
    private static final int CELL_PAD_PX = 16;

    private final TableViewer viewer;
    private final Runnable sortedAnew;
    private final Runnable fitted;
    private final Map<OptionColumn, TableColumn> columns = new EnumMap<>(OptionColumn.class);
    private final Map<OptionColumn, Integer> given = new EnumMap<>(OptionColumn.class);
    private final Set<OptionColumn> drawn = EnumSet.noneOf(OptionColumn.class);
    private OptionColumn sorted = OptionColumn.VERDICT;
    private boolean downward;
    private boolean byScore = true;
    private List<ComparedOption> all = List.of();
    private Map<Criterion, Integer> weights = ComparisonWeights.kept();

    /**
     * Makes the table.
     *
     * @param parent     where it goes
     * @param sortedAnew run after the order has changed
     * @param fitted     run after the reasons were given their room
     */
    public OptionTable(Composite parent, Runnable sortedAnew, Runnable fitted) {
        this.sortedAnew = sortedAnew;
        this.fitted = fitted;
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
        viewer.getTable().addListener(SWT.Resize, event -> viewer.getTable().getDisplay().asyncExec(this::fit));
    }

    private void addColumn(OptionColumn column) {
        TableViewerColumn made = new TableViewerColumn(viewer, column.isRight() ? SWT.RIGHT : SWT.LEFT);
        TableColumn widget = made.getColumn();
        widget.setText(column.heading());
        widget.setToolTipText(column.tip());
        widget.setWidth(Math.max(TypeScale.px(column.width()), titleWidth(column.heading())));
        widget.setMoveable(true);
        columns.put(column, widget);
        widget.addListener(SWT.Resize, event -> resized(column));
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

    private int titleWidth(String title) {
        return TypeScale.headingPx(viewer.getTable(), title);
    }

    /**
     * Gives names what they need, and the reasons what the columns before them leave of the table, so that they are in sight without
     * scrolling. A column that somebody has drawn keeps its width.
     */
    void fit() {
        Table table = viewer.getTable();
        if (table.isDisposed() || table.getClientArea().width <= 0) {
            return;
        }
        give(OptionColumn.NAME, widest(OptionColumn.NAME));
        give(OptionColumn.WHY, Math.min(widest(OptionColumn.WHY), table.getClientArea().width - left(columns.get(OptionColumn.WHY))));
        fitted.run();
    }

    /** Returns a width in which the reasons are whole beside the columns before them, pixels. */
    int neededWidth() {
        return left(columns.get(OptionColumn.WHY)) - columns.get(OptionColumn.NAME).getWidth() + widest(OptionColumn.NAME)
                + widest(OptionColumn.WHY);
    }

    /** Returns a width in which most reasons are whole, pixels. */
    int leastWidth() {
        return neededWidth() - widest(OptionColumn.WHY) + Math.min(widest(OptionColumn.WHY),
                Math.max(TypeScale.px(OptionColumn.WHY.width()), titleWidth(OptionColumn.WHY.heading())));
    }

    /** Returns a height in which every row is in sight, pixels. */
    int neededHeight() {
        Table table = viewer.getTable();
        return table.getHeaderHeight() + Math.max(1, all.size()) * table.getItemHeight() + TypeScale.px(CELL_PAD_PX);
    }

    private void give(OptionColumn column, int width) {
        if (!drawn.contains(column)) {
            given.put(column, Math.max(width, titleWidth(column.heading())));
            columns.get(column).setWidth(given.get(column));
        }
    }

    /** The desktop tells of the widths that were given, too; any other one is that of a hand. */
    private void resized(OptionColumn column) {
        Integer before = given.get(column);
        if (before != null && columns.get(column).getWidth() != before) {
            drawn.add(column);
            fitted.run();
        }
    }

    private int widest(OptionColumn column) {
        GC gc = new GC(viewer.getTable());
        try {
            return all.stream().mapToInt(option -> gc.textExtent(column.text(option)).x).max().orElse(0) + TypeScale.px(CELL_PAD_PX);
        } finally {
            gc.dispose();
        }
    }

    /** Returns where a column begins, pixels from the left edge of the table. */
    private int left(TableColumn column) {
        Table table = viewer.getTable();
        return IntStream.of(table.getColumnOrder()).mapToObj(table::getColumn).takeWhile(other -> other != column)
                .mapToInt(TableColumn::getWidth).sum();
    }

    /** Returns the reasons that are not whole in their column, in the order of the rows, each with the option that it is about. */
    List<String> cutReasons() {
        TableColumn why = columns.get(OptionColumn.WHY);
        int room = Math.min(why.getWidth(), viewer.getTable().getClientArea().width - left(why)) - TypeScale.px(CELL_PAD_PX) / 2;
        boolean isOnePlace = all.stream().map(option -> option.place().label()).distinct().count() == 1;
        GC gc = new GC(viewer.getTable());
        try {
            return shown().stream().filter(option -> !option.why().isEmpty() && gc.textExtent(option.why()).x > room)
                    .map(option -> (isOnePlace ? option.name() : option.name() + ", " + option.place().label()) + ": " + option.why())
                    .toList();
        } finally {
            gc.dispose();
        }
    }

    /** Returns what the rules have against the places themselves, each once. */
    List<String> ofPlaces() {
        boolean isOnePlace = all.stream().map(option -> option.place().hostId()).distinct().count() == 1;
        return shown().stream().map(ComparedOption::place).filter(place -> !place.against().isEmpty())
                .map(place -> isOnePlace ? place.against() : place.name() + ": " + place.against()).distinct().toList();
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
        ComparisonWeights.keep(weights);
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
