package slopewright.ui.plan.internal.tools;

import java.util.function.Consumer;

import org.eclipse.draw2d.Cursors;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.tools.AbstractTool;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;

/** Asks for points: each click is passed on, Escape ends it. */
public final class PickTool extends AbstractTool {

    private final Consumer<Point> picked;
    private final Runnable cancelled;

    /**
     * Makes a tool.
     *
     * @param picked    takes each point, pixels of the control
     * @param cancelled is run when the user does not want any more
     */
    public PickTool(Consumer<Point> picked, Runnable cancelled) {
        this.picked = picked;
        this.cancelled = cancelled;
        setDefaultCursor(Cursors.CROSS);
    }

    @Override
    protected boolean handleButtonUp(int button) {
        if (button == 1) {
            picked.accept(getLocation().getCopy());
        }
        return true;
    }

    @Override
    protected boolean handleKeyDown(KeyEvent event) {
        if (event.keyCode == SWT.ESC) {
            cancelled.run();
            return true;
        }
        return super.handleKeyDown(event);
    }

    @Override
    protected String getCommandName() {
        return "pick";
    }
}
