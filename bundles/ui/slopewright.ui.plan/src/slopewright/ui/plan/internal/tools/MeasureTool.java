package slopewright.ui.plan.internal.tools;

import java.util.List;
import java.util.Optional;

import org.eclipse.draw2d.Cursors;
import org.eclipse.gef.tools.AbstractTool;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.ui.diagram.Diagram;
import slopewright.ui.diagram.figures.ReadoutFigure.Line;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.plan.internal.Readings;
import slopewright.ui.plan.internal.figures.Marks;
import slopewright.ui.plan.internal.policies.MoveFeedback;

/**
 * Measures between two places: pressed at one and drawn to the other it shows the distance on the ground and the bearing from true north.
 * The line stays until the next one, or until Escape.
 */
public final class MeasureTool extends AbstractTool {

    private static final double CIRCLE_DEG = 360;
    private static final double TENTHS = 10;

    private final Diagram diagram;
    private final MoveFeedback feedback;
    private Optional<ScenePoint> from = Optional.empty();

    /** Makes the tool of a plan. */
    public MeasureTool(Diagram diagram) {
        this.diagram = diagram;
        this.feedback = new MoveFeedback(diagram);
        setDefaultCursor(Cursors.CROSS);
    }

    private ScenePoint here() {
        return new ScenePoint(diagram.view().worldX(getLocation().x), diagram.view().worldY(getLocation().y));
    }

    @Override
    protected boolean handleButtonDown(int button) {
        if (button == 1) {
            stateTransition(STATE_INITIAL, STATE_DRAG_IN_PROGRESS);
            from = Optional.of(here());
            show();
        }
        return true;
    }

    @Override
    protected boolean handleDragInProgress() {
        if (isInState(STATE_DRAG_IN_PROGRESS)) {
            show();
        }
        return true;
    }

    @Override
    protected boolean handleButtonUp(int button) {
        setState(STATE_INITIAL);
        return true;
    }

    private void show() {
        ScenePoint start = from.orElseThrow();
        ScenePoint end = here();
        double east = end.x() - start.x();
        double north = end.y() - start.y();
        double bearing = (Math.toDegrees(Math.atan2(east, north)) + CIRCLE_DEG) % CIRCLE_DEG;
        Marks marks = new Marks("").line(Style.line(Ink.WHEELS, 0.5), List.of(start, end));
        feedback.show(marks.list(), List.of(Line.of(Messages.get("measure.distance", Readings.length(Math.hypot(east, north)))),
                Line.of(Messages.get("measure.bearing", Math.round(bearing * TENTHS) / TENTHS))), end);
    }

    @Override
    protected boolean handleKeyDown(KeyEvent event) {
        if (event.keyCode == SWT.ESC) {
            feedback.erase();
            getDomain().loadDefaultTool();
            return true;
        }
        return super.handleKeyDown(event);
    }

    @Override
    public void deactivate() {
        feedback.erase();
        super.deactivate();
    }

    @Override
    protected String getCommandName() {
        return "measure";
    }
}
