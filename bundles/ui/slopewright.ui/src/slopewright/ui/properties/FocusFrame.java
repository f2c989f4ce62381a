package slopewright.ui.properties;

import org.eclipse.jface.viewers.ColumnViewer;
import org.eclipse.jface.viewers.FocusCellHighlighter;
import org.eclipse.jface.viewers.ViewerCell;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;

/** Shows which cell the keyboard has reached by a frame around it; text, image and selection stay as they are. */
final class FocusFrame extends FocusCellHighlighter {

    /** Makes the frame of a viewer. */
    FocusFrame(ColumnViewer viewer) {
        super(viewer);
        viewer.getControl().addListener(SWT.PaintItem, this::paint);
    }

    private void paint(Event event) {
        ViewerCell cell = getFocusCell();
        if (cell != null && cell.getItem() == event.item && cell.getColumnIndex() == event.index) {
            event.gc.drawRectangle(event.x - 2, event.y, event.width + 2, event.height - 1);
        }
    }

    @Override
    protected void focusCellChanged(ViewerCell newCell, ViewerCell oldCell) {
        super.focusCellChanged(newCell, oldCell);
        for (ViewerCell cell : new ViewerCell[] {oldCell, newCell}) {
            if (cell != null && !cell.getControl().isDisposed() && !cell.getItem().isDisposed()) {
                cell.getControl().redraw();
            }
        }
    }
}
