package slopewright.ui.theme;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;

/** How much larger the letters of the desktop are than usual, so that what is measured in pixels grows with them. */
public final class TypeScale {

    /** The usual size of letters: ten points at 96 pixels an inch. */
    private static final double USUAL_PX = 10 * 96 / 72.0;
    private static final double POINTS_PER_INCH = 72;
    private static final double BOLD = 1.15;
    private static final int HEADING_PAD_PX = 16;

    private TypeScale() {
    }

    /** Returns how many times larger they are; 1 where they are not larger. */
    public static double factor() {
        double px = JFaceResources.getDialogFont().getFontData()[0].getHeight() * Display.getCurrent().getDPI().y / POINTS_PER_INCH;
        return Math.max(1, px / USUAL_PX);
    }

    /** Returns a width that suits letters of the usual size as one that suits those of the desktop, pixels. */
    public static int px(int usualPx) {
        return (int) Math.round(usualPx * factor());
    }

    /**
     * Returns a width in which the heading of a column is whole; the desktop writes it in bold letters.
     *
     * @param table what the column is of
     * @param title the heading
     */
    public static int headingPx(Control table, String title) {
        GC gc = new GC(table);
        try {
            return (int) Math.ceil(gc.textExtent(title).x * BOLD) + px(HEADING_PAD_PX);
        } finally {
            gc.dispose();
        }
    }
}
