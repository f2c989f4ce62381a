package slopewright.ui.properties;

import org.eclipse.jface.viewers.ColumnViewerEditor;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationEvent;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationListener;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationStrategy;
import org.eclipse.jface.viewers.ColumnViewerEditorDeactivationEvent;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerEditor;
import org.eclipse.jface.viewers.TableViewerFocusCellManager;
import org.eclipse.swt.SWT;

/** How the cells of a table are typed into: reached by the arrow keys, opened by Enter, F2 or a click, and left to the next one by Tab. */
public final class CellEditing {

    private CellEditing() {
    }

    /**
     * Lets cells be reached and opened by keys and by a click.
     *
     * @param viewer the table
     * @param click  the click that opens a cell, of {@link ColumnViewerEditorActivationEvent}
     * @param closed run once a cell was closed, whether or not its text was taken; not where the table is gone by then
     */
    public static void begin(TableViewer viewer, int click, Runnable closed) {
        TableViewerEditor.create(viewer, new TableViewerFocusCellManager(viewer, new FocusFrame(viewer)), new Opening(viewer, click),
                ColumnViewerEditor.TABBING_HORIZONTAL | ColumnViewerEditor.TABBING_MOVE_TO_ROW_NEIGHBOR
                        | ColumnViewerEditor.KEYBOARD_ACTIVATION);
        viewer.getColumnViewerEditor().addEditorActivationListener(new Closing(viewer, closed));
    }

    private static final class Opening extends ColumnViewerEditorActivationStrategy {

        private final int click;

        Opening(TableViewer viewer, int click) {
            super(viewer);
            this.click = click;
        }

        @Override
        protected boolean isEditorActivationEvent(ColumnViewerEditorActivationEvent event) {
            boolean key = event.eventType == ColumnViewerEditorActivationEvent.KEY_PRESSED
                    && (event.keyCode == SWT.F2 || event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR);
            return key || event.eventType == click || event.eventType == ColumnViewerEditorActivationEvent.TRAVERSAL
                    || event.eventType == ColumnViewerEditorActivationEvent.PROGRAMMATIC;
        }
    }

    private static final class Closing extends ColumnViewerEditorActivationListener {

        private final TableViewer viewer;
        private final Runnable closed;

        Closing(TableViewer viewer, Runnable closed) {
            this.viewer = viewer;
            this.closed = closed;
        }

        @Override
        public void beforeEditorActivated(ColumnViewerEditorActivationEvent event) {
            // the rows stay as they are
        }

        @Override
        public void afterEditorActivated(ColumnViewerEditorActivationEvent event) {
            // the rows stay as they are
        }

        @Override
        public void beforeEditorDeactivated(ColumnViewerEditorDeactivationEvent event) {
            // the rows stay as they are
        }

        @Override
        public void afterEditorDeactivated(ColumnViewerEditorDeactivationEvent event) {
            viewer.getTable().getDisplay().asyncExec(() -> {
                if (!viewer.getTable().isDisposed()) {
                    closed.run();
                }
            });
        }
    }
}
