package slopewright.ui.review.internal;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Text;

/** What all fields for searching have in common: the key Escape empties them. */
public final class SearchField {

    /** Room of the sign before the words and of the one that empties the field, pixels. */
    private static final int SIGNS_PX = 70;

    private SearchField() {
    }

    /**
     * Returns a width in which the words that stand in an empty field are whole, pixels.
     *
     * @param least the least it is to have
     */
    public static int width(Text field, int least) {
        GC gc = new GC(field);
        try {
            return Math.max(least, gc.textExtent(field.getMessage()).x + SIGNS_PX);
        } finally {
            gc.dispose();
        }
    }

    /** Lets Escape empty a field, and take no effect beyond it while there is something to empty. */
    public static void clearByEscape(Text field) {
        field.addListener(SWT.Traverse, event -> {
            if (event.detail == SWT.TRAVERSE_ESCAPE && !field.getText().isEmpty()) {
                field.setText("");
                event.doit = false;
            }
        });
    }
}
