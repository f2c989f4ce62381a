package slopewright.ui.diagram.tools;

import org.eclipse.gef.EditPartViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;

import slopewright.ui.diagram.WorldView;

/** Zooms about the pointer with the wheel and pans with the middle button, whatever tool is active. */
public final class ViewNavigation {

    /** Under this key a viewer keeps its {@link WorldView}. */
    public static final String VIEW = "slopewright.worldView";

    private static final double STEP = 1.2;

    private final WorldView view;
    private int lastX;
    private int lastY;
    private boolean panning;

    private ViewNavigation(WorldView view) {
        this.view = view;
    }

    /** Starts to listen to the control of a viewer. */
    public static void install(EditPartViewer viewer, WorldView view) {
        viewer.setProperty(VIEW, view);
        ViewNavigation navigation = new ViewNavigation(view);
        Control control = viewer.getControl();
        control.addListener(SWT.MouseWheel, navigation::wheel);
        control.addListener(SWT.MouseDown, navigation::down);
        control.addListener(SWT.MouseMove, navigation::move);
        control.addListener(SWT.MouseUp, navigation::up);
    }

    private void wheel(Event event) {
        view.zoomAt(event.x, event.y, event.count > 0 ? STEP : 1 / STEP);
        event.doit = false;
    }

    private void down(Event event) {
        panning = event.button == 2;
        lastX = event.x;
        lastY = event.y;
    }

    private void move(Event event) {
        if (panning) {
            view.pan(event.x - lastX, event.y - lastY);
            lastX = event.x;
            lastY = event.y;
        }
    }

    private void up(Event event) {
        panning = false;
    }
}
