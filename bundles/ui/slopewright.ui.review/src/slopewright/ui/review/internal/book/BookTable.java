package slopewright.ui.review.internal.book;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;

import slopewright.checks.BookKeeping;
import slopewright.ui.theme.TypeScale;

/** The values of the book, those that most rests on first; a click on a heading sorts them otherwise. */
public final class BookTable {
    /** Which values are shown. */
    public enum Shown {
        /** Those that results wait for and that are not signed. */
        OPEN(row -> BookKeeping.isToConfirm(row.entry()) && !row.entry().isSigned()),
        /** Those that somebody decided and nobody signed off. */
        UNSIGNED(row -> row.entry().lacksToDecide().isEmpty() && !row.entry().isSigned()),
        /** All. */
        ALL(row -> true);

        private final Predicate<BookKeeping.Row> holds;

        Shown(Predicate<BookKeeping.Row> holds) {
            this.holds = holds;
        }
    }

    private static final int WIDEST = 380;
    private static final int BESIDE_TEXT = 18;

    private final TableViewer viewer;
    private boolean isFitted;
    private List<BookKeeping.Row> rows = List.of();
    private Shown shown = Shown.OPEN;
    private String words = "";
    private BookColumn sorted = BookColumn.RESULTS;

    /** Makes the table. */
    public BookTable(Composite parent) {
        viewer = new TableViewer(parent, SWT.FULL_SELECTION | SWT.MULTI | SWT.V_SCROLL | SWT.H_SCROLL);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        viewer.getTable().setHeaderVisible(true);
        viewer.getTable().setLinesVisible(true);
        for (BookColumn column : BookColumn.values()) {
            TableViewerColumn made = new TableViewerColumn(viewer, column.isRight() ? SWT.RIGHT : SWT.LEFT);
            made.getColumn().setText(column.title());
            made.getColumn().setMoveable(true);
            made.getColumn().addListener(SWT.Selection, event -> sort(column));
            made.setLabelProvider(new ColumnLabelProvider() {
                @Override
                public String getText(Object element) {
                    return column.text((BookKeeping.Row) element);
                }

                @Override
                public String getToolTipText(Object element) {
                    return getText(element);
                }
            });
        }
        ColumnViewerToolTipSupport.enableFor(viewer);
        viewer.setInput(List.of());
    }

    private void sort(BookColumn column) {
        sorted = column;
        refresh();
    }

    /** Shows rows; what was selected stays so. */
    public void show(List<BookKeeping.Row> all) {
        rows = List.copyOf(all);
        refresh();
        if (!isFitted && !rows.isEmpty()) {
            isFitted = true;
            fit();
        }
    }

    /** Gives each column the room that its title and its texts need, once; what is wider than that is told where the mouse points. */
    private void fit() {
        GC gc = new GC(viewer.getTable());
        for (BookColumn column : BookColumn.values()) {
            int title = gc.textExtent(column.title()).x;
            int texts = rows.stream().map(column::text).distinct().mapToInt(text -> gc.textExtent(text).x).max().orElse(0);
            viewer.getTable().getColumn(column.ordinal()).setWidth(Math.max(title, Math.min(texts, TypeScale.px(WIDEST)))
                    + TypeScale.px(BESIDE_TEXT));
        }
        gc.dispose();
    }

    /** Shows only some of the rows. */
    public void filter(Shown which, String search) {
        shown = which;
        words = search.strip().toLowerCase(Locale.ROOT);
        refresh();
    }

    private void refresh() {
        Set<String> selected = selected().stream().map(row -> row.entry().name()).collect(Collectors.toSet());
        List<BookKeeping.Row> visible = rows.stream().filter(shown.holds).filter(this::contains).sorted(sorted.order()).toList();
        viewer.setInput(visible);
        viewer.setSelection(new StructuredSelection(visible.stream().filter(row -> selected.contains(row.entry().name())).toList()));
    }

    private boolean contains(BookKeeping.Row row) {
        return words.isEmpty() || row.entry().key().contains(words) || Stream.of(BookColumn.values())
                .anyMatch(column -> column.text(row).toLowerCase(Locale.ROOT).contains(words));
    }

    /** Returns the rows that are shown, in their order. */
    public List<BookKeeping.Row> shown() {
        return Stream.of(viewer.getTable().getItems()).map(item -> (BookKeeping.Row) item.getData()).toList();
    }

    /** Returns the selected rows, in the order of the table. */
    public List<BookKeeping.Row> selected() {
        IStructuredSelection selection = viewer.getStructuredSelection();
        return Stream.of(selection.toArray()).map(BookKeeping.Row.class::cast).toList();
    }

    /** Selects rows. */
    public void select(List<BookKeeping.Row> some) {
        viewer.setSelection(new StructuredSelection(some), true);
    }

    /** Calls back when the selection changes. */
    public void onSelection(Runnable action) {
        viewer.addSelectionChangedListener(event -> action.run());
    }

    /** Returns the table. */
    public Table control() {
        return viewer.getTable();
    }

    /** Returns what a row shows, column by column, parted by tabs. */
    public static String line(BookKeeping.Row row) {
        return Stream.of(BookColumn.values()).map(column -> column.text(row)).collect(Collectors.joining("\t"));
    }
}
