package slopewright.ui.tests;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;

/** Sends a control what a mouse sends. */
abstract class MouseDriver {

    /** The control under the mouse. */
    abstract Control control();

    private void mouse(int type, Point at, int button, int stateMask) {
        Event event = new Event();
        event.x = at.x;
        event.y = at.y;
        event.button = button;
        event.stateMask = stateMask;
        event.count = 1;
        control().notifyListeners(type, event);
    }

    void move(Point to) {
        mouse(SWT.MouseMove, to, 0, 0);
    }

    void press(Point at) {
        press(at, 0);
    }

    private void press(Point at, int keys) {
        move(at);
        mouse(SWT.MouseDown, at, 1, keys);
    }

    /** Moves with the button pressed, in some steps as a hand does. */
    void drag(Point from, Point to, int keys) {
        for (int i = 1; i <= 4; i++) {
            mouse(SWT.MouseMove, new Point(from.x + (to.x - from.x) * i / 4, from.y + (to.y - from.y) * i / 4), 0, SWT.BUTTON1 | keys);
        }
    }

    /** Moves to a place with the button pressed, in one step. */
    void drag(Point to) {
        mouse(SWT.MouseMove, to, 0, SWT.BUTTON1);
    }

    void release(Point at, int keys) {
        mouse(SWT.MouseUp, at, 1, SWT.BUTTON1 | keys);
        Patience.pause(20);
    }

    void click(Point at) {
        click(at, 0);
    }

    /** Clicks with keys held down. */
    void click(Point at, int keys) {
        press(at, keys);
        release(at, keys);
    }

    void dragAndDrop(Point from, Point to, int keys) {
        press(from);
        drag(from, to, keys);
        release(to, keys);
    }
}
