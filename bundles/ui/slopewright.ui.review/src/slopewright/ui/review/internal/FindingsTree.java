package slopewright.ui.review.internal;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeColumn;
import org.eclipse.swt.widgets.TreeItem;

import slopewright.checks.CheckResult;
import slopewright.checks.Outcome;
import slopewright.checks.Verdict;
import slopewright.ui.AccessibleName;
import slopewright.ui.Images;
import slopewright.ui.review.internal.FindingsModel.Group;
import slopewright.ui.review.internal.FindingsModel.Grouping;

/**
 * The outcomes as a tree, in groups or as a plain list. Rows are made when they come into sight, so that many of them cost no more than
 * a few; the selection stays when a new result comes.
 */
public final class FindingsTree {

    private static final int EXPANDED_AT_MOST = 150;

    private final Tree tree;
    private final FindingsModel model = new FindingsModel();
    private final LocalResourceManager resources;
    private final List<OutcomeColumn> columns = new ArrayList<>();
    private final List<Runnable> selectionListeners = new CopyOnWriteArrayList<>();
    private final Set<String> closed = new HashSet<>();
    private final ColumnFit fit;
    private Set<String> chosen = Set.of();
    private Function<Outcome, String> remark = outcome -> "";

    /** Makes the tree. */
    public FindingsTree(Composite parent) {
        tree = new Tree(parent, SWT.VIRTUAL | SWT.MULTI | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL);
        resources = new LocalResourceManager(JFaceResources.getResources(), tree);
        tree.setHeaderVisible(true);
        AccessibleName.give(tree, Messages.get("findings.title"));
        for (OutcomeColumn column : OutcomeColumn.values()) {
            addColumn(column);
        }
        tree.addListener(SWT.SetData, this::fill);
        HeadingPainter.paint(tree);
        PathPainter.paint(tree, (item, column) -> columns.get(column) == OutcomeColumn.ELEMENT && !HeadingPainter.isHeading(item));
        tree.addListener(SWT.Selection, event -> {
            chosen = names(selected());
            tell();
        });
        tree.addListener(SWT.Collapse, event -> closed.add(heading(event)));
        tree.addListener(SWT.Expand, event -> closed.remove(heading(event)));
        fit = new ColumnFit(tree);
        closed.add(Messages.get("checklist.met"));
        closed.add(Messages.get("checklist.not-applicable"));
        updateColumns();
        tree.addListener(SWT.Resize, event -> fitColumns());
    }

    private void fitColumns() {
        boolean withElement = model.grouping() == Grouping.NONE || model.grouping() == Grouping.VERDICT;
        boolean withVerdict = model.grouping() != Grouping.VERDICT;
        fit.fit(columns, model.shown(), column -> (column != OutcomeColumn.VERDICT || withVerdict)
                && (column != OutcomeColumn.ELEMENT || withElement || columns.get(0) == OutcomeColumn.ELEMENT));
    }

    private String heading(Event event) {
        int index = tree.indexOf((TreeItem) event.item);
        return index >= 0 && index < model.groups().size() ? model.groups().get(index).heading() : "";
    }

    private void addColumn(OutcomeColumn column) {
        TreeColumn made = new TreeColumn(tree, column.isRight() ? SWT.RIGHT : SWT.LEFT);
        columns.add(column);
        made.addListener(SWT.Selection, event -> {
            model.sort(columns.get(tree.indexOf(made)));
            tree.setSortColumn(made);
            tree.setSortDirection(model.isUpward() ? SWT.DOWN : SWT.UP);
            rebuild();
        });
    }

    /** The first column holds what tells the rows of a group apart; what the heading says needs no column. */
    private void updateColumns() {
        boolean byRule = model.grouping() == Grouping.RULE;
        columns.set(0, byRule ? OutcomeColumn.ELEMENT : OutcomeColumn.RULE);
        columns.set(1, OutcomeColumn.ELEMENT);
        for (int i = 0; i < columns.size(); i++) {
            tree.getColumn(i).setText(columns.get(i).title());
        }
        fitColumns();
    }

    private boolean isFlat() {
        return model.grouping() == Grouping.NONE;
    }

    private void fill(Event event) {
        TreeItem item = (TreeItem) event.item;
        TreeItem parent = item.getParentItem();
        int group = parent != null ? tree.indexOf(parent) : isFlat() ? 0 : event.index;
        if (group >= model.groups().size()) {
            return;
        }
        Group of = model.groups().get(group);
        if (parent == null && !isFlat()) {
            fill(item, of);
        } else if (event.index < of.outcomes().size()) {
            fill(item, of.outcomes().get(event.index));
        }
    }

    private void fill(TreeItem item, Outcome outcome) {
        for (int i = 0; i < columns.size(); i++) {
            item.setText(i, columns.get(i).text(outcome));
        }
        item.setText(0, item.getText(0) + remark.apply(outcome));
        item.setImage(0, image(outcome));
    }

    private void fill(TreeItem item, Group group) {
        item.setText(0, group.heading() + "  (" + group.outcomes().size() + ")");
        item.setImage(0, image(group.worst()));
        item.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        item.setItemCount(group.outcomes().size());
    }

    private Image image(Outcome outcome) {
        return Images.of(outcome.verdict()).image(resources);
    }

    private Set<String> names(List<Outcome> outcomes) {
        return outcomes.stream().map(model::name).collect(Collectors.toSet());
    }

    /** The rows that the user selected last are selected again, whatever stands where they stood; those that are not shown wait. */
    private void rebuild() {
        tree.setRedraw(false);
        tree.removeAll();
        List<Group> groups = model.groups();
        tree.setItemCount(isFlat() ? model.shown().size() : groups.size());
        if (!isFlat() && groups.size() <= EXPANDED_AT_MOST) {
            for (int i = 0; i < groups.size(); i++) {
                TreeItem item = tree.getItem(i);
                fill(item, groups.get(i));
                item.setExpanded(!closed.contains(groups.get(i).heading()));
            }
        }
        fitColumns();
        tree.setRedraw(true);
        place(model.shown().stream().filter(outcome -> chosen.contains(model.name(outcome))).toList());
    }

    /** Shows a result; rows of the same rule and element stay selected. */
    public void show(Optional<CheckResult> result) {
        model.show(result);
        rebuild();
    }

    /** Says what stands behind the first cell of each row that is written from now on. */
    public void remark(Function<Outcome, String> newRemark) {
        remark = newRemark;
    }

    /** Puts the rows under their element, under their rule, or under nothing. */
    void group(Grouping by) {
        model.group(by);
        updateColumns();
        rebuild();
    }

    /** Returns under what the rows stand. */
    Grouping grouping() {
        return model.grouping();
    }

    /** Shows only some outcomes. */
    public void filter(OutcomeFilter which) {
        model.filter(which);
        rebuild();
    }

    /** Shows only rows that contain some words. */
    public void search(String text) {
        model.search(text);
        rebuild();
    }

    /** Returns what is shown, in the order of the rows. */
    public List<Outcome> shown() {
        return model.shown();
    }

    /** Returns the outcomes of the selected rows; a selected heading stands for all under it. */
    public List<Outcome> selected() {
        Set<Outcome> selected = new LinkedHashSet<>();
        for (TreeItem item : tree.getSelection()) {
            TreeItem parent = item.getParentItem();
            List<Group> groups = model.groups();
            int group = isFlat() ? 0 : tree.indexOf(parent == null ? item : parent);
            if (group < groups.size()) {
                List<Outcome> rows = groups.get(group).outcomes();
                int row = isFlat() ? tree.indexOf(item) : parent == null ? -1 : parent.indexOf(item);
                (row < 0 ? rows.stream() : Stream.of(rows.get(Math.min(row, rows.size() - 1)))).forEach(selected::add);
            }
        }
        return List.copyOf(selected);
    }

    /**
     * Returns the outcome of the selected row where one row is selected; a heading of the checklist stands for the first row under it, with
     * which it shares the missing input or the value to confirm.
     */
    public Optional<Outcome> single() {
        TreeItem[] items = tree.getSelection();
        boolean heading = items.length == 1 && !isFlat() && items[0].getParentItem() == null && grouping() != Grouping.VERDICT;
        return items.length == 1 && !heading ? selected().stream().findFirst() : Optional.empty();
    }

    /** Returns what is not met among several selected rows, or under the heading of all that is; nothing where one row is selected. */
    public List<Outcome> several() {
        List<Outcome> failed = selected().stream().filter(outcome -> outcome.verdict() == Verdict.NOT_MET).toList();
        boolean one = tree.getSelection().length == 1 && (isFlat() || tree.getSelection()[0].getParentItem() != null);
        return one || failed.size() < 2 ? List.of() : failed;
    }

    /** Returns the one outcome that was selected last, as it is now, whether it is shown or filtered out; empty where it was several. */
    public Optional<Outcome> followed() {
        return chosen.size() == 1 ? model.all().stream().filter(outcome -> chosen.contains(model.name(outcome))).findFirst()
                : Optional.empty();
    }

    /** Selects the rows of some outcomes and brings the first into sight. */
    public void select(List<Outcome> outcomes) {
        chosen = names(outcomes);
        place(outcomes);
    }

    private void place(List<Outcome> outcomes) {
        Set<Outcome> wanted = Set.copyOf(outcomes);
        List<TreeItem> items = new ArrayList<>();
        for (int g = 0; g < model.groups().size(); g++) {
            List<Outcome> rows = model.groups().get(g).outcomes();
            for (int r = 0; r < rows.size(); r++) {
                if (wanted.contains(rows.get(r))) {
                    items.add(item(g, r));
                }
            }
        }
        tree.setSelection(items.toArray(TreeItem[]::new));
        if (!items.isEmpty()) {
            tree.showItem(items.get(0));
        }
        tell();
    }

    private TreeItem item(int group, int row) {
        if (isFlat()) {
            return tree.getItem(row);
        }
        TreeItem heading = tree.getItem(group);
        if (heading.getItemCount() == 0) {
            fill(heading, model.groups().get(group));
        }
        return heading.getItem(row);
    }

    private void tell() {
        selectionListeners.forEach(Runnable::run);
    }

    /** Adds what is run when other rows are selected. */
    public void onSelection(Runnable listener) {
        selectionListeners.add(listener);
    }

    /** Returns the widget. */
    public Tree control() {
        return tree;
    }
}
