package slopewright.ui.properties;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

import slopewright.checks.compare.ProjectDifference;
import slopewright.checks.compare.ProjectDifference.Change;
import slopewright.model.Project;
import slopewright.ui.AccessibleName;
import slopewright.ui.MessageTexts;
import slopewright.ui.theme.TypeScale;

/** What differs between two versions of a project, entry by entry: element, entry, before, after. */
public final class DifferenceTable {

    private static final int[] WIDTHS = {230, 190, 170, 170};
    private static final int MOST_ROWS = 2000;

    private final Table table;

    /**
     * Makes the table.
     *
     * @param parent where it stands
     * @param before heading of the older values
     * @param after  heading of the newer values
     */
    public DifferenceTable(Composite parent, String before, String after) {
        table = new Table(parent, SWT.BORDER | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL);
        table.setHeaderVisible(true);
        AccessibleName.give(table, PropertyTexts.get("difference.entry"));
        String[] titles = {PropertyTexts.get("difference.element"), PropertyTexts.get("difference.entry"), before, after};
        for (int i = 0; i < titles.length; i++) {
            TableColumn column = new TableColumn(table, SWT.LEFT);
            column.setText(titles[i]);
            column.setWidth(TypeScale.px(WIDTHS[i]));
        }
    }

    /**
     * Shows what differs.
     *
     * @param older the older version
     * @param newer the newer version
     */
    public void show(Project older, Project newer) {
        table.removeAll();
        for (String[] row : rows(older, newer)) {
            new TableItem(table, SWT.NONE).setText(row);
        }
    }

    /** Returns what differs: for each entry the element, the entry, the older and the newer value. */
    public static List<String[]> rows(Project older, Project newer) {
        List<Change> changes = ProjectDifference.changes(older, newer);
        List<String[]> rows = new ArrayList<>();
        for (Change change : changes.subList(0, Math.min(MOST_ROWS, changes.size()))) {
            Project named = change.kind().equals("removed") ? older : newer;
            boolean whole = change.attribute().isEmpty();
            rows.add(new String[] {MessageTexts.of(change.path()), ChangeTexts.what(change, named),
                    whole ? "" : ChangeTexts.value(change, named, change.before()),
                    whole ? ChangeTexts.kind(change) : ChangeTexts.value(change, named, change.after())});
        }
        if (changes.size() > MOST_ROWS) {
            rows.add(new String[] {PropertyTexts.get("change.more", changes.size() - MOST_ROWS), "", "", ""});
        }
        return rows;
    }

    /** Returns how much differs, in words. */
    public static String count(Project older, Project newer) {
        int number = ProjectDifference.changes(older, newer).size();
        return number == 0 ? PropertyTexts.get("difference.order") : PropertyTexts.get("difference.count", number);
    }

    /** Returns the widget. */
    public Table control() {
        return table;
    }
}
