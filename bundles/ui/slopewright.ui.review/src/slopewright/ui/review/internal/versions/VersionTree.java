package slopewright.ui.review.internal.versions;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeColumn;
import org.eclipse.swt.widgets.TreeItem;

import slopewright.ui.Images;
import slopewright.ui.review.internal.Messages;
import slopewright.ui.theme.TypeScale;

/** What differs, under the element that it is about. */
public final class VersionTree {

    private static final int EXPANDED_AT_MOST = 60;

    private final Tree tree;
    private final LocalResourceManager resources;
    private List<VersionRow> rows = List.of();
    private Map<String, List<VersionRow>> shown = Map.of();
    private String words = "";

    /** Makes the tree. */
    public VersionTree(Composite parent) {
        tree = new Tree(parent, SWT.VIRTUAL | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL);
        resources = new LocalResourceManager(JFaceResources.getResources(), tree);
        tree.setHeaderVisible(true);
        int[] widths = {300, 230, 230};
        String[] titles = {"versions.what", "versions.before", "versions.after"};
        for (int i = 0; i < titles.length; i++) {
            TreeColumn column = new TreeColumn(tree, SWT.LEFT);
            column.setText(Messages.get(titles[i]));
            column.setWidth(TypeScale.px(widths[i]));
        }
        tree.addListener(SWT.SetData, event -> {
            TreeItem item = (TreeItem) event.item;
            TreeItem above = item.getParentItem();
            if (above == null) {
                heading(item, event.index);
            } else {
                fill(item, group(tree.indexOf(above)).get(event.index));
            }
        });
    }

    private List<VersionRow> group(int index) {
        return List.copyOf(shown.values()).get(index);
    }

    private void heading(TreeItem item, int index) {
        List<VersionRow> group = group(index);
        item.setText(0, group.get(0).path() + "  (" + group.size() + ")");
        item.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        item.setItemCount(group.size());
    }

    private void fill(TreeItem item, VersionRow row) {
        item.setText(new String[] {row.what(), row.before(), row.after()});
        row.outcome().ifPresent(outcome -> item.setImage(0, Images.of(outcome.verdict()).image(resources)));
        item.setData(row);
    }

    /** Shows what differs. */
    public void show(List<VersionRow> all) {
        rows = List.copyOf(all);
        rebuild();
    }

    /** Shows only rows that contain some words. */
    public void search(String text) {
        words = text.strip().toLowerCase(Locale.ROOT);
        rebuild();
    }

    private void rebuild() {
        shown = rows.stream().filter(row -> words.isEmpty() || row.contains(words))
                .collect(Collectors.groupingBy(VersionRow::path, LinkedHashMap::new, Collectors.toList()));
        tree.setRedraw(false);
        tree.removeAll();
        tree.setItemCount(shown.size());
        if (shown.size() <= EXPANDED_AT_MOST) {
            for (int i = 0; i < shown.size(); i++) {
                heading(tree.getItem(i), i);
                tree.getItem(i).setExpanded(true);
            }
        }
        tree.setRedraw(true);
    }

    /** Returns the id of the element of the selected row. */
    public Optional<String> selectedId() {
        TreeItem[] selection = tree.getSelection();
        if (selection.length == 0) {
            return Optional.empty();
        }
        TreeItem heading = selection[0].getParentItem() == null ? selection[0] : selection[0].getParentItem();
        return Optional.of(group(tree.indexOf(heading)).get(0).element());
    }

    /** Returns what is shown, in the order of the rows. */
    public List<VersionRow> shown() {
        return shown.values().stream().flatMap(List::stream).toList();
    }

    /** Returns the widget. */
    public Tree control() {
        return tree;
    }
}
