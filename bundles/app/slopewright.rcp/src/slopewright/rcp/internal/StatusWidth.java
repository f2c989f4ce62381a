package slopewright.rcp.internal;

import org.eclipse.jface.action.StatusLineLayoutData;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;

/** Gives a label of the status line the room that its text needs; the type of the window is known only after the label was made. */
final class StatusWidth {

    private StatusWidth() {
    }

    /** Widens a label to its text. One that was wider stays so, lest its neighbours jump with each new text. */
    static void fit(CLabel label) {
        if (label.isDisposed()) {
            return;
        }
        StatusLineLayoutData data = (StatusLineLayoutData) label.getLayoutData();
        int needed = label.computeSize(SWT.DEFAULT, SWT.DEFAULT).x;
        if (needed > data.widthHint) {
            data.widthHint = needed;
            label.requestLayout();
        }
    }
}
