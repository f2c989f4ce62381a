package slopewright.ui.profile.internal.section;

import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;

import slopewright.geometry.FramePoint;
import slopewright.ui.diagram.WorldView;

/**
 * Works the section by keyboard: arrows move the crosshair, with Shift in small steps; Enter places the pilot's eye; plus and minus zoom
 * about the crosshair; Home shows the whole approach and End the threshold; with the Alt key arrows turn all beams by a minute of arc
 * and move the aid by a metre. Escape gives up what the mouse is dragging.
 */
public final class SectionKeys {

    private static final double STEP_PX = 12;
    private static final double SMALL_STEP_PX = 1;
    private static final double ZOOM = 1.2;
    private static final double MINUTE_DEG = 1 / 60.0;

    private final SectionSource source;
    private final SectionCanvas canvas;
    private final SectionTools tools;
    private final SectionTools.Target target;

    private SectionKeys(SectionSource source, SectionCanvas canvas, SectionTools tools, SectionTools.Target target) {
        this.source = source;
        this.canvas = canvas;
        this.tools = tools;
        this.target = target;
    }

    /** Starts to listen to a canvas. */
    public static void install(SectionSource source, SectionCanvas canvas, SectionTools tools, SectionTools.Target target) {
        SectionKeys keys = new SectionKeys(source, canvas, tools, target);
        Control control = canvas.control();
        control.addListener(SWT.KeyDown, keys::key);
        control.addListener(SWT.Traverse, event -> event.doit = event.detail == SWT.TRAVERSE_TAB_NEXT
                || event.detail == SWT.TRAVERSE_TAB_PREVIOUS);
    }

    private void key(Event event) {
        if (event.keyCode == SWT.ESC) {
            tools.cancel();
        } else if (canvas.section().isPresent() && !tools.isDragging()) {
            event.doit = !act(event);
        }
    }

    private boolean act(Event event) {
        boolean alt = (event.stateMask & SWT.ALT) != 0;
        double step = (event.stateMask & SWT.SHIFT) != 0 ? SMALL_STEP_PX : STEP_PX;
        switch (event.keyCode) {
            case SWT.ARROW_LEFT -> arrow(alt, -1, 0, step);
            case SWT.ARROW_RIGHT -> arrow(alt, 1, 0, step);
            case SWT.ARROW_UP -> arrow(alt, 0, -1, step);
            case SWT.ARROW_DOWN -> arrow(alt, 0, 1, step);
            case SWT.CR, SWT.KEYPAD_CR -> canvas.crosshair().ifPresent(target::look);
            case SWT.HOME -> canvas.fit(SectionCanvas.Extent.WHOLE);
            case SWT.END -> canvas.fit(SectionCanvas.Extent.NEAR);
            default -> {
                return typed(event);
            }
        }
        return true;
    }

    private boolean typed(Event event) {
        if (event.character == '+' || event.character == '=' || event.keyCode == SWT.KEYPAD_ADD) {
            zoom(ZOOM);
        } else if (event.character == '-' || event.keyCode == SWT.KEYPAD_SUBTRACT) {
            zoom(1 / ZOOM);
        } else {
            return false;
        }
        return true;
    }

    private void zoom(double factor) {
        WorldView view = canvas.view();
        Optional<FramePoint> about = canvas.crosshair();
        view.zoomAt(about.map(at -> view.toX(at.alongM())).orElse(view.widthPx() / 2),
                about.map(at -> view.toY(at.heightM())).orElse(view.heightPx() / 2), factor);
    }

    private void arrow(boolean edits, int right, int down, double stepPx) {
        if (edits) {
            source.aid().ifPresent(aid -> target.perform((right != 0 ? SectionEdits.move(right, Optional.empty())
                    : SectionEdits.turn(-down * MINUTE_DEG, Optional.empty())).apply(aid)));
            return;
        }
        WorldView view = canvas.view();
        Optional<FramePoint> from = canvas.crosshair().or(canvas::eye);
        double x = from.map(at -> view.toX(at.alongM())).orElse(view.widthPx() / 2) + right * stepPx;
        double y = from.map(at -> view.toY(at.heightM())).orElse(view.heightPx() / 2) + down * stepPx;
        x = Math.max(0, Math.min(view.widthPx(), x));
        y = Math.max(0, Math.min(view.heightPx(), y));
        canvas.crosshair(Optional.of(tools.place(x, y)));
        target.read();
    }
}
