package slopewright.ui.review.internal;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;

/**
 * Paints the heading of a group over all columns of a tree, whose other cells it leaves empty: a heading is as long as what it says, and
 * nothing of it is cut where the tree has room. Each cell paints its part of the whole line.
 */
final class HeadingPainter {

    private HeadingPainter() {
    }

    /** Paints the headings of a tree from now on: the rows that stand under nothing and hold others. */
    static void paint(Tree tree) {
        tree.addListener(SWT.EraseItem, event -> {
            if (isHeading((TreeItem) event.item)) {
                event.detail &= ~SWT.FOREGROUND;
            }
        });
        tree.addListener(SWT.PaintItem, event -> {
            if (isHeading((TreeItem) event.item)) {
                part((TreeItem) event.item, event);
            }
        });
    }

    /** Returns whether a row stands under nothing and holds others. */
    static boolean isHeading(TreeItem item) {
        return item.getParentItem() == null && item.getItemCount() > 0;
    }

    private static void part(TreeItem item, Event event) {
        Image image = item.getImage(0);
        if (event.index == 0 && image != null) {
            Rectangle place = item.getImageBounds(0);
            event.gc.drawImage(image, place.x, event.y + (event.height - image.getBounds().height) / 2);
        }
        event.gc.setFont(item.getFont());
        event.gc.setForeground(item.getForeground()); // what the toolkit names for selected rows is white, and paints them light
        String heading = item.getText(0);
        event.gc.drawText(heading, item.getTextBounds(0).x, event.y + (event.height - event.gc.textExtent(heading).y) / 2, true);
    }
}
