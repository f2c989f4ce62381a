package slopewright.ui.elements;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.CellEditor;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationEvent;
import org.eclipse.jface.viewers.EditingSupport;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.TableColumn;

import slopewright.edit.EditException;
import slopewright.edit.RecordedEdit;
import slopewright.geometry.Decimals;
import slopewright.model.Identified;
import slopewright.ui.MessageTexts;
import slopewright.ui.properties.CellEditing;
import slopewright.ui.properties.CheckedTextCellEditor;
import slopewright.ui.theme.TypeScale;

/** The table of one sheet: sorted by a click on a heading, filtered by a word, typed into by F2, Enter or a click, and on by Tab. */
final class ElementTable {

    private static final int MOST = 3000;
    private static final int LEAST_WIDTH = 70;
    private static final int NAME_WIDTH = 150;
    private static final int MOST_WIDTH = 220;
    private static final int CHARACTER_WIDTH = 8;
    private static final int EDGES = 24;
    private static final int MOST_MEASURED = 200;

    private final TableViewer viewer;
    private final Consumer<RecordedEdit> edits;
    private final Consumer<String> refusals;
    private final List<Cell> cells = new ArrayList<>();
    private Optional<ElementSheet> sheet = Optional.empty();
    private List<String> titles = List.of();
    private int[] widths = {};
    private List<Identified> rows = List.of();
    private List<Identified> shown = List.of();
    private String filter = "";
    private int sorted = -1;
    private boolean descending;
    private boolean late;

    /**
     * Makes an empty table.
     *
     * @param parent   where it stands
     * @param edits    receives what is typed
     * @param refusals is told why something that was typed is not taken
     */
    ElementTable(Composite parent, Consumer<RecordedEdit> edits, Consumer<String> refusals) {
        this.edits = edits;
        this.refusals = refusals;
        viewer = new TableViewer(parent, SWT.FULL_SELECTION | SWT.MULTI | SWT.V_SCROLL | SWT.H_SCROLL);
        viewer.getTable().setHeaderVisible(true);
        viewer.getTable().setLinesVisible(true);
        viewer.setUseHashlookup(true);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        CellEditing.begin(viewer, ColumnViewerEditorActivationEvent.MOUSE_DOUBLE_CLICK_SELECTION, () -> {
            if (late) {
                arrange();
            }
        });
    }

    TableViewer viewer() {
        return viewer;
    }

    /** Shows the rows of a sheet. */
    void show(Optional<ElementSheet> newSheet, List<Identified> newRows) {
        sheet = newSheet;
        rows = newRows;
        List<String> wanted = newSheet.map(ElementSheet::titles).orElse(List.of());
        if (!wanted.equals(titles)) {
            titles = wanted;
            sorted = -1;
            renewColumns();
        }
        fit();
        arrange();
    }

    /** Gives each column the room that its title and its texts need, within reason; one that the user has drawn keeps its width. */
    private void fit() {
        for (int i = 0; i < widths.length; i++) {
            TableColumn column = viewer.getTable().getColumn(i);
            if (widths[i] == 0 || column.getWidth() == widths[i]) {
                int words = longest(column(i)) * CHARACTER_WIDTH + EDGES;
                int wanted = Math.max(TypeScale.headingPx(viewer.getTable(), titles.get(i)),
                        TypeScale.px(Math.max(i == 0 ? NAME_WIDTH : LEAST_WIDTH, Math.min(MOST_WIDTH, words))));
                widths[i] = Math.max(widths[i], wanted);
                column.setWidth(widths[i]);
            }
        }
    }

    private void renewColumns() {
        viewer.cancelEditing();
        viewer.getTable().setRedraw(false);
        viewer.setInput(List.of());
        for (TableColumn column : viewer.getTable().getColumns()) {
            column.dispose();
        }
        cells.forEach(Cell::dispose);
        cells.clear();
        for (int i = 0; i < titles.size(); i++) {
            int index = i;
            TableViewerColumn made = new TableViewerColumn(viewer, SWT.LEFT);
            made.getColumn().setText(titles.get(i));
            made.getColumn().addListener(SWT.Selection, event -> sort(index));
            made.setLabelProvider(ColumnLabelProvider.createTextProvider(row -> column(index).shown((Identified) row)));
            Cell cell = new Cell(index);
            cells.add(cell);
            made.setEditingSupport(cell);
        }
        widths = new int[titles.size()];
        viewer.getTable().setRedraw(true);
    }

    /** Returns how many letters the longest text of a column has, of the rows that are looked at. */
    private int longest(ElementColumn column) {
        return rows.stream().limit(MOST_MEASURED).mapToInt(row -> column.shown(row).length()).max().orElse(0);
    }

    private ElementColumn column(int index) {
        return sheet.orElseThrow().columns().get(index);
    }

    /** Sorts by a column, the other way round at the second click, and not at all after the third. */
    private void sort(int index) {
        if (sorted != index) {
            sorted = index;
            descending = false;
        } else if (!descending) {
            descending = true;
        } else {
            sorted = -1;
        }
        arrange();
    }

    void filter(String words) {
        filter = words.strip().toLowerCase(Locale.ROOT);
        arrange();
    }

    /** While a cell is open the rows keep their order and only say what they hold now; they are arranged when it is closed. */
    private void arrange() {
        late = viewer.isCellEditorActive();
        if (late) {
            viewer.update(shown.toArray(), null);
            return;
        }
        List<Identified> kept = new ArrayList<>(rows.stream().filter(this::isKept).toList());
        if (sorted >= 0 && sorted < titles.size()) {
            ElementColumn by = column(sorted);
            Comparator<Identified> order = (first, second) -> compare(by.typed(first), by.typed(second));
            kept.sort(descending ? order.reversed() : order);
            viewer.getTable().setSortColumn(viewer.getTable().getColumn(sorted));
            viewer.getTable().setSortDirection(descending ? SWT.DOWN : SWT.UP);
        } else {
            viewer.getTable().setSortDirection(SWT.NONE);
        }
        List<Identified> next = kept.size() > MOST ? List.copyOf(kept.subList(0, MOST)) : List.copyOf(kept);
        if (next.equals(shown) && viewer.getInput() != null && viewer.getTable().getItemCount() == next.size()) {
            viewer.refresh(true);
        } else {
            shown = next;
            List<?> selected = viewer.getStructuredSelection().toList();
            viewer.setInput(shown);
            viewer.setSelection(new StructuredSelection(selected.stream().filter(shown::contains).toList()));
        }
    }

    private boolean isKept(Identified row) {
        return filter.isEmpty() || sheet.orElseThrow().shown(row).stream().anyMatch(text -> text.toLowerCase(Locale.ROOT).contains(filter));
    }

    /** Numbers by their size, what is no number by its letters, nothing last. */
    private static int compare(String first, String second) {
        OptionalDouble a = number(first);
        OptionalDouble b = number(second);
        if (a.isPresent() && b.isPresent()) {
            return Double.compare(a.getAsDouble(), b.getAsDouble());
        }
        return first.isEmpty() != second.isEmpty() ? first.isEmpty() ? 1 : -1 : String.CASE_INSENSITIVE_ORDER.compare(first, second);
    }

    private static OptionalDouble number(String text) {
        try {
            return text.isBlank() ? OptionalDouble.empty() : OptionalDouble.of(Decimals.parse(text));
        } catch (IllegalArgumentException e) {
            return OptionalDouble.empty();
        }
    }

    /** Returns how many rows there are, and how many of them are shown. */
    String count() {
        return shown.size() == rows.size() ? Messages.get("table.rows", rows.size())
                : Messages.get(shown.size() == MOST ? "table.first" : "table.some", shown.size(), rows.size());
    }

    List<Identified> selected() {
        List<?> rowsSelected = viewer.getStructuredSelection().toList();
        return rowsSelected.stream().map(Identified.class::cast).toList();
    }

    List<Identified> shown() {
        return shown;
    }

    /** Selects a row and opens its first cell that can be typed into. */
    void begin(Identified row) {
        viewer.setSelection(new StructuredSelection(row), true);
        viewer.getTable().setFocus();
        for (int i = 0; i < titles.size(); i++) {
            if (column(i).isTyped(row)) {
                viewer.editElement(row, i);
                return;
            }
        }
    }

    /** A cell that is typed into as text; what can be chosen is chosen by its beginning, or from the list. */
    private final class Cell extends EditingSupport {

        private final int index;
        private final CheckedTextCellEditor text = new CheckedTextCellEditor(viewer.getTable());
        private Optional<ChoiceCellEditor> choice = Optional.empty();
        private String wrong;
        private Identified edited;

        Cell(int index) {
            super(viewer);
            this.index = index;
            text.onRefusal((typed, why) -> refuse(why));
        }

        private void refuse(String why) {
            refusals.accept(Messages.get("table.refused", column(index).name(), why));
        }

        @Override
        protected CellEditor getCellEditor(Object element) {
            edited = (Identified) element;
            wrong = null;
            List<String> choices = column(index).choices(edited);
            if (choices.isEmpty()) {
                text.setValidator(this::fault);
                return text;
            }
            ChoiceCellEditor list = choice.orElseGet(() -> new ChoiceCellEditor(viewer.getTable()));
            list.setItems(choices.toArray(String[]::new));
            list.setValidator(this::fault);
            list.onRefusal(this::refuse);
            choice = Optional.of(list);
            return list;
        }

        void dispose() {
            text.dispose();
            choice.ifPresent(CellEditor::dispose);
        }

        private String fault(Object typed) {
            wrong = null;
            try {
                if (!column(index).typed(edited).equals(typed)) {
                    column(index).edit(edited, String.valueOf(typed));
                }
            } catch (IllegalArgumentException | EditException e) {
                wrong = MessageTexts.reason(e);
            }
            return wrong;
        }

        @Override
        protected boolean canEdit(Object element) {
            return column(index).isTyped((Identified) element);
        }

        @Override
        protected Object getValue(Object element) {
            return column(index).typed((Identified) element);
        }

        @Override
        protected void setValue(Object element, Object typed) {
            if (typed == null || fault(typed) != null) {
                refuse(String.valueOf(wrong));
            } else if (!typed.equals(getValue(element))) {
                edits.accept(column(index).edit((Identified) element, String.valueOf(typed)));
            }
        }
    }
}
