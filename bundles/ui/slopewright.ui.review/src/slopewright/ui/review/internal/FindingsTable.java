package slopewright.ui.review.internal;

import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnPixelData;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.jface.viewers.Viewer;
import org.eclipse.jface.viewers.ViewerComparator;
import org.eclipse.jface.viewers.ViewerFilter;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.TableColumn;

import slopewright.checks.CheckResult;
import slopewright.checks.Outcome;
import slopewright.ui.Images;

/** The table of outcomes: filtered, sorted by any column, keeps its selection when a new result comes. */
public final class FindingsTable {

    private final TableViewer viewer;
    private final LocalResourceManager resources;
    private final Map<Outcome, String> keys = new IdentityHashMap<>();
    private OutcomeColumn sorted = OutcomeColumn.RULE;
    private boolean upward;
    private boolean all;
    private String words = "";

    /** Makes the table in a composite of its own. */
    public FindingsTable(Composite parent) {
        Composite holder = new Composite(parent, SWT.NONE);
        TableColumnLayout layout = new TableColumnLayout();
        holder.setLayout(layout);
        viewer = new TableViewer(holder, SWT.FULL_SELECTION | SWT.MULTI | SWT.V_SCROLL | SWT.H_SCROLL);
        resources = new LocalResourceManager(JFaceResources.getResources(), viewer.getControl());
        viewer.getTable().setHeaderVisible(true);
        viewer.getTable().getAccessible().addAccessibleListener(AccessibleName.of("Findings"));
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        for (OutcomeColumn column : OutcomeColumn.values()) {
            addColumn(column, layout);
        }
        viewer.setComparator(new Order());
        viewer.addFilter(new Filter());
        viewer.setInput(List.of());
    }

    private final class Order extends ViewerComparator {

        @Override
        public int compare(Viewer shown, Object one, Object other) {
            Comparator<Outcome> order = sorted.order();
            int result = (upward ? order.reversed() : order).compare((Outcome) one, (Outcome) other);
            return result != 0 ? result : ((Outcome) one).elementPath().compareTo(((Outcome) other).elementPath());
        }
    }

    private final class Filter extends ViewerFilter {

        @Override
        public boolean select(Viewer shown, Object parent, Object element) {
            Outcome outcome = (Outcome) element;
            return (all || outcome.weight().isPresent()) && (words.isEmpty() || line(outcome).toLowerCase(Locale.ROOT).contains(words));
        }
    }

    private static final class Labels extends ColumnLabelProvider {

        private final OutcomeColumn column;
        private final LocalResourceManager resources;

        Labels(OutcomeColumn column, LocalResourceManager resources) {
            this.column = column;
            this.resources = resources;
        }

        @Override
        public String getText(Object element) {
            return column.text((Outcome) element);
        }

        @Override
        public Image getImage(Object element) {
            return column == OutcomeColumn.RULE ? Images.of((Outcome) element).image(resources) : null;
        }

        @Override
        public String getToolTipText(Object element) {
            return ((Outcome) element).explanation();
        }
    }

    private void addColumn(OutcomeColumn column, TableColumnLayout layout) {
        TableViewerColumn made = new TableViewerColumn(viewer, column.isRight() ? SWT.RIGHT : SWT.LEFT);
        TableColumn widget = made.getColumn();
        widget.setText(column.title());
        widget.setMoveable(true);
        layout.setColumnData(widget, new ColumnPixelData(column.width(), true, true));
        made.setLabelProvider(new Labels(column, resources));
        widget.addListener(SWT.Selection, (Event event) -> sortBy(column, widget));
    }

    private void sortBy(OutcomeColumn column, TableColumn widget) {
        upward = column == sorted && !upward;
        sorted = column;
        viewer.getTable().setSortColumn(widget);
        viewer.getTable().setSortDirection(upward ? SWT.DOWN : SWT.UP);
        viewer.refresh();
    }

    /** Returns the viewer; its elements are outcomes. */
    public TableViewer viewer() {
        return viewer;
    }

    /** Shows every outcome, or findings only. */
    public void showAll(boolean every) {
        all = every;
        viewer.refresh();
    }

    /** Shows only rows that contain some words. */
    public void search(String text) {
        words = text.strip().toLowerCase(Locale.ROOT);
        viewer.refresh();
    }

    /** Shows a result; rows of the same rule and element stay selected. */
    public void show(Optional<CheckResult> result) {
        Set<String> before = selected().stream().map(keys::get).collect(Collectors.toSet());
        List<Outcome> outcomes = result.map(CheckResult::outcomes).orElse(List.of());
        keys.clear();
        Map<String, Integer> numbers = new HashMap<>();
        for (Outcome outcome : outcomes) {
            String key = outcome.rule() + " " + outcome.elementPath();
            keys.put(outcome, key + " " + numbers.merge(key, 1, Integer::sum));
        }
        viewer.setInput(outcomes);
        viewer.setSelection(new StructuredSelection(outcomes.stream().filter(one -> before.contains(keys.get(one))).toList()));
    }

    /** Returns the selected outcomes in the order of the table. */
    public List<Outcome> selected() {
        return viewer.getStructuredSelection().stream().map(Outcome.class::cast).toList();
    }

    /** Returns an outcome as one line of text, columns parted by tabs. */
    public static String line(Outcome outcome) {
        StringBuilder line = new StringBuilder();
        for (OutcomeColumn column : OutcomeColumn.values()) {
            line.append(column.text(outcome)).append('\t');
        }
        return line.append(outcome.explanation()).toString();
    }
}
