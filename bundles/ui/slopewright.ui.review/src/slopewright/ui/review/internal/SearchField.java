package slopewright.ui.review.internal;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Text;

/** What all fields for searching have in common: the key Escape empties them. */
public final class SearchField {

    private SearchField() {
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
