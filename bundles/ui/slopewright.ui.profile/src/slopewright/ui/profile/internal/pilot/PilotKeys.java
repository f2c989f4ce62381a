package slopewright.ui.profile.internal.pilot;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;

import slopewright.geometry.FramePoint;

/** Moves the eye by the keyboard and flies the approach: arrows, Page Up and Page Down, Home, Space. */
final class PilotKeys {

    private static final double SIDE_M = 5;
    private static final double UP_M = 1;
    private static final double ALONG_M = 50;
    private static final double LARGE = 10;

    /** What the keys do. */
    interface Target {

        /** Moves the eye by metres. */
        void move(double alongM, double rightM, double upM);

        /** Flies or stops. */
        void play();

        /** Moves the eye onto the slope. */
        void onSlope();
    }

    private final Target target;

    private PilotKeys(Target target) {
        this.target = target;
    }

    /** Listens to the keys of a control. */
    static void listen(Control control, Target target) {
        control.addListener(SWT.KeyDown, new PilotKeys(target)::pressed);
        control.addListener(SWT.Traverse, event -> {
            if (event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS) {
                event.doit = true;
            }
        });
    }

    static FramePoint moved(FramePoint eye, double alongM, double rightM, double upM) {
        return new FramePoint(eye.alongM() + alongM, eye.rightM() + rightM, eye.heightM() + upM);
    }

    private void pressed(Event event) {
        double size = (event.stateMask & SWT.SHIFT) == 0 ? 1 : LARGE;
        switch (event.keyCode) {
            case SWT.ARROW_LEFT -> target.move(0, -SIDE_M * size, 0);
            case SWT.ARROW_RIGHT -> target.move(0, SIDE_M * size, 0);
            case SWT.ARROW_UP -> target.move(0, 0, UP_M * size);
            case SWT.ARROW_DOWN -> target.move(0, 0, -UP_M * size);
            case SWT.PAGE_UP -> target.move(ALONG_M * size, 0, 0);
            case SWT.PAGE_DOWN -> target.move(-ALONG_M * size, 0, 0);
            case SWT.HOME -> target.onSlope();
            case ' ' -> target.play();
            default -> {
                return;
            }
        }
        event.doit = false;
    }
}
