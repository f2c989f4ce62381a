package slopewright.ui.review.internal;

import java.util.function.BiPredicate;
import java.util.function.ToIntFunction;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;

/**
 * Paints where an element stands so that its own name is seen: where a cell has no room for all of it, what is left out is the way there,
 * from its beginning, and a tooltip says the whole. The text of the cell stays whole, for whoever copies it or has it read aloud.
 */
public final class PathPainter {

    private static final String BETWEEN = " > ";
    private static final String LEFT_OUT = "\u2026 > ";
    private static final String CUT = "\u2026";
    private static final int END_PX = 4;

    private final Tree tree;
    private final BiPredicate<TreeItem, Integer> isPath;

    private PathPainter(Tree tree, BiPredicate<TreeItem, Integer> isPath) {
        this.tree = tree;
        this.isPath = isPath;
    }

    /**
     * Paints the places of elements in a tree from now on.
     *
     * @param tree   the tree
     * @param isPath whether a column of a row holds one
     */
    public static void paint(Tree tree, BiPredicate<TreeItem, Integer> isPath) {
        PathPainter painter = new PathPainter(tree, isPath);
        tree.addListener(SWT.EraseItem, event -> {
            if (painter.isCut((TreeItem) event.item, event.index, event.gc)) {
                event.detail &= ~SWT.FOREGROUND;
            }
        });
        tree.addListener(SWT.PaintItem, event -> {
            if (painter.isCut((TreeItem) event.item, event.index, event.gc)) {
                painter.paint((TreeItem) event.item, event);
            }
        });
        tree.addListener(SWT.MouseMove, event -> painter.tell(new Point(event.x, event.y)));
        tree.addListener(SWT.MouseExit, event -> tree.setToolTipText(null));
    }

    private boolean isCut(TreeItem item, int column, GC gc) {
        return isPath.test(item, column) && gc.textExtent(item.getText(column)).x > room(item, column);
    }

    private static int room(TreeItem item, int column) {
        Rectangle cell = item.getBounds(column);
        return cell.x + cell.width - item.getTextBounds(column).x - END_PX;
    }

    private void paint(TreeItem item, Event event) {
        Image image = item.getImage(event.index);
        if (image != null) {
            Rectangle place = item.getImageBounds(event.index);
            event.gc.drawImage(image, place.x, event.y + (event.height - image.getBounds().height) / 2);
        }
        event.gc.setForeground(item.getForeground(event.index)); // as in the other cells, also of a selected row
        String shown = fitted(item.getText(event.index), room(item, event.index), text -> event.gc.textExtent(text).x);
        event.gc.drawText(shown, item.getTextBounds(event.index).x, event.y + (event.height - event.gc.textExtent(shown).y) / 2, true);
    }

    private void tell(Point place) {
        String whole = whole(place);
        if (whole == null ? tree.getToolTipText() != null : !whole.equals(tree.getToolTipText())) {
            tree.setToolTipText(whole);
        }
    }

    /** Returns the whole text of the cell at a place, null where it is seen whole. */
    private String whole(Point place) {
        TreeItem item = tree.getItem(place);
        if (item == null) {
            return null;
        }
        GC gc = new GC(tree);
        try {
            for (int column = 0; column < tree.getColumnCount(); column++) {
                if (item.getBounds(column).contains(place)) {
                    return isCut(item, column, gc) ? item.getText(column) : null;
                }
            }
            return null;
        } finally {
            gc.dispose();
        }
    }

    /**
     * Returns as much of the end of a place as there is room for.
     *
     * @param path  where an element stands, from its runway or helipad downward
     * @param room  how wide it may be
     * @param width how wide a text is
     * @return the whole where it fits; else the last names that do, else the end of the last name
     */
    static String fitted(String path, int room, ToIntFunction<String> width) {
        if (width.applyAsInt(path) <= room) {
            return path;
        }
        String rest = path;
        for (int at = rest.indexOf(BETWEEN); at >= 0; at = rest.indexOf(BETWEEN)) {
            rest = rest.substring(at + BETWEEN.length());
            if (width.applyAsInt(LEFT_OUT + rest) <= room) {
                return LEFT_OUT + rest;
            }
        }
        while (rest.length() > 1 && width.applyAsInt(CUT + rest) > room) {
            rest = rest.substring(rest.offsetByCodePoints(0, 1));
        }
        return CUT + rest;
    }
}
