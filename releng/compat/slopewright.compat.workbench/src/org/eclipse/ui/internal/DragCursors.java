package org.eclipse.ui.internal;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Cursor;
import org.eclipse.swt.widgets.Display;

/**
 * The drag cursors that the 2007 diagram framework asks for when its palette is dragged to the other side.
 * Only that framework's compiled code uses this class; the cursors are the display's own and are never disposed.
 */
public final class DragCursors {

    /** Dropping is not possible here. */
    public static final int INVALID = 0;
    /** Dropping goes to the left. */
    public static final int LEFT = 1;
    /** Dropping goes to the right. */
    public static final int RIGHT = 2;
    /** Dropping goes to the top. */
    public static final int TOP = 3;
    /** Dropping goes to the bottom. */
    public static final int BOTTOM = 4;

    private DragCursors() {
    }

    /**
     * Gives the cursor for a place.
     *
     * @param code one of the constants of this class
     * @return a system cursor of the current display
     */
    public static Cursor getCursor(int code) {
        int style = switch (code) {
            case LEFT -> SWT.CURSOR_SIZEW;
            case RIGHT -> SWT.CURSOR_SIZEE;
            case TOP -> SWT.CURSOR_SIZEN;
            case BOTTOM -> SWT.CURSOR_SIZES;
            case INVALID -> SWT.CURSOR_NO;
            default -> SWT.CURSOR_SIZEALL;
        };
        return Display.getCurrent().getSystemCursor(style);
    }
}
