package slopewright.ui.review.internal;

import java.util.List;
import java.util.function.Predicate;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeColumn;

import slopewright.checks.Outcome;

/**
 * Gives the columns of the findings the room there is, by what they hold and in the font that the desktop has: nothing is cut where all of
 * it fits; else clause and provenance have what the others leave, and where that is little they make way, for they stand in the explanation
 * too; else short columns are whole and the long ones share what is left. A column that the user has drawn keeps its width; a column
 * without any value takes none.
 */
final class ColumnFit {

    /** The desktop writes titles in bold letters. */
    private static final double BOLD = 1.15;
    private static final int PAD_PX = 18;
    private static final int INDENT_PX = 58;
    private static final int MOST_MEASURED = 400;
    private static final int LEAST_PX = 40;
    private static final int ENOUGH_LETTERS = 20;

    private final Tree tree;
    private final boolean[] drawn;
    private int[] applied;
    private int room;
    private boolean fitting;

    ColumnFit(Tree tree) {
        this.tree = tree;
        drawn = new boolean[tree.getColumnCount()];
        applied = new int[drawn.length];
        for (int i = 0; i < drawn.length; i++) {
            int index = i;
            tree.getColumn(i).addListener(SWT.Resize, event -> drawn[index] |= isDrawn(index));
        }
    }

    /** The desktop tells the widths that were set, and stretches the last column by itself; any other width is that of a hand. */
    private boolean isDrawn(int index) {
        boolean isLast = true;
        for (int i = index + 1; i < applied.length; i++) {
            isLast &= applied[i] == 0;
        }
        return !fitting && tree.isVisible() && !isLast && applied[index] > 0 && tree.getColumn(index).getWidth() != applied[index]
                && room == tree.getClientArea().width;
    }

    /**
     * Sets the widths.
     *
     * @param columns what each column of the tree shows
     * @param shown   the outcomes that are shown
     * @param wanted  which columns are shown at all
     */
    void fit(List<OutcomeColumn> columns, List<Outcome> shown, Predicate<OutcomeColumn> wanted) {
        int bar = tree.getVerticalBar() == null ? 0 : tree.getVerticalBar().getSize().x;
        room = tree.getClientArea().width;
        int free = Math.min(room, tree.getSize().x - bar);
        if (free <= 0) {
            return;
        }
        int[] needs = new int[columns.size()];
        GC gc = new GC(tree);
        try {
            int enough = gc.textExtent("n".repeat(ENOUGH_LETTERS)).x;
            for (int i = 0; i < needs.length; i++) {
                boolean isSecond = i > 0 && columns.get(i) == columns.get(0);
                needs[i] = isSecond || !wanted.test(columns.get(i)) ? 0 : need(gc, columns.get(i), shown) + (i == 0 ? INDENT_PX : PAD_PX);
            }
            shareRest(needs, columns, free, enough);
        } finally {
            gc.dispose();
        }
        apply(widths(needs, free));
    }

    /** Clause and provenance take what the others leave, if that is enough to read them by: names and values come first. */
    private static void shareRest(int[] needs, List<OutcomeColumn> columns, int free, int enough) {
        int[] last = {columns.indexOf(OutcomeColumn.CLAUSE), columns.indexOf(OutcomeColumn.PROVENANCE)};
        int rest = free - total(needs, Integer.MAX_VALUE);
        for (int index : last) {
            rest += Math.max(0, needs[index]);
        }
        for (int index : last) {
            int given = Math.min(rest, needs[index]);
            needs[index] = given < Math.min(enough, needs[index]) ? 0 : given;
            rest -= Math.max(0, needs[index]);
        }
    }

    private static int need(GC gc, OutcomeColumn column, List<Outcome> shown) {
        int widest = shown.stream().limit(MOST_MEASURED).mapToInt(outcome -> gc.textExtent(column.text(outcome)).x).max().orElse(0);
        return widest == 0 && !shown.isEmpty() ? -PAD_PX : Math.max(widest, (int) Math.ceil(gc.textExtent(column.title()).x * BOLD));
    }

    /**
     * Shares room out.
     *
     * @param needs what each column needs, pixels
     * @param room  what there is
     * @return the widths: the needs where they fit, the rest added to the first; else the longest are cut to one common width
     */
    static int[] widths(int[] needs, int room) {
        int sum = total(needs, Integer.MAX_VALUE);
        int cap = cap(needs, room);
        int[] widths = new int[needs.length];
        for (int i = 0; i < needs.length; i++) {
            widths[i] = capped(needs, i, cap);
        }
        if (sum < room && widths.length > 0) {
            widths[0] += room - sum;
        }
        return widths;
    }

    private static int cap(int[] needs, int room) {
        if (total(needs, Integer.MAX_VALUE) <= room) {
            return Integer.MAX_VALUE;
        }
        int cap = LEAST_PX;
        while (total(needs, cap + 1) <= room) {
            cap++;
        }
        return cap;
    }

    private static int total(int[] needs, int cap) {
        int total = 0;
        for (int i = 0; i < needs.length; i++) {
            total += capped(needs, i, cap);
        }
        return total;
    }

    /** The first column gives up twice as late as the others: it says what a row is about, behind its indent and image. */
    private static int capped(int[] needs, int index, int cap) {
        int most = index == 0 && cap < Integer.MAX_VALUE / 2 ? 2 * cap : cap;
        return Math.min(most, Math.max(0, needs[index]));
    }

    private void apply(int[] widths) {
        fitting = true;
        applied = widths;
        try {
            for (int i = 0; i < widths.length; i++) {
                TreeColumn column = tree.getColumn(i);
                column.setResizable(widths[i] > 0);
                if (widths[i] == 0 || !drawn[i] || column.getWidth() == 0) {
                    column.setWidth(widths[i]);
                }
            }
        } finally {
            fitting = false;
        }
    }
}
