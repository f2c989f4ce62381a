package slopewright.ui.plan.internal.tools;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.gef.EditPart;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.KeyHandler;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.commands.CompoundCommand;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;

import slopewright.model.ApproachHost;
import slopewright.model.Identified;
import slopewright.model.LightUnit;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.site.PlanAxis;
import slopewright.ui.diagram.WorldView;
import slopewright.ui.diagram.policies.MoveRequest;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.plan.internal.PlanContext;

/**
 * The keyboard: arrows move what is selected by 1 m, with Shift by 0.1 m, with Ctrl by 10 m, along or across its runway, whichever is
 * nearer to the arrow, and turn an approach direction by as many degrees; with nothing selected they move the view. Plus and minus zoom,
 * Escape clears the selection.
 */
public final class PlanKeys extends KeyHandler {

    private static final double STEP_M = 1;
    private static final double SMALL_STEP_M = 0.1;
    private static final double LARGE_STEP_M = 10;
    private static final double PAN_PX = 60;
    private static final double ZOOM = 1.3;

    private final PlanContext context;
    private final GraphicalViewer viewer;

    /** Makes the keyboard of a plan. */
    public PlanKeys(PlanContext context) {
        this.context = context;
        this.viewer = context.diagram().viewer();
    }

    @Override
    public boolean keyPressed(KeyEvent event) {
        WorldView view = context.diagram().view();
        switch (event.keyCode) {
            case SWT.ARROW_LEFT -> arrow(event, -1, 0);
            case SWT.ARROW_RIGHT -> arrow(event, 1, 0);
            case SWT.ARROW_UP -> arrow(event, 0, 1);
            case SWT.ARROW_DOWN -> arrow(event, 0, -1);
            case '+', '=', SWT.KEYPAD_ADD -> view.zoom(ZOOM);
            case '-', SWT.KEYPAD_SUBTRACT -> view.zoom(1 / ZOOM);
            case SWT.ESC -> {
                viewer.deselectAll();
                context.notice("");
            }
            default -> {
                return super.keyPressed(event);
            }
        }
        return true;
    }

    private void arrow(KeyEvent event, int toX, int toY) {
        boolean large = (event.stateMask & SWT.MOD1) != 0;
        double step = (event.stateMask & SWT.SHIFT) != 0 ? SMALL_STEP_M : large ? LARGE_STEP_M : STEP_M;
        CompoundCommand moves = new CompoundCommand(Messages.get("edit.move"));
        Set<Object> done = new HashSet<>();
        for (Object selected : viewer.getSelectedEditParts().toArray()) {
            EditPart part = (EditPart) selected;
            Command move = isMovedWith(part, done) ? null : move(part, toX, toY, step);
            if (move != null) {
                moves.add(move);
            }
        }
        if (moves.isEmpty()) {
            context.diagram().view().pan(-toX * PAN_PX, toY * PAN_PX);
        } else {
            viewer.getEditDomain().getCommandStack().execute(moves);
        }
    }

    /** Returns whether a part is moved by what was moved before: units that are selected together, and units of a selected aid. */
    private static boolean isMovedWith(EditPart part, Set<Object> done) {
        Object group = part.getModel() instanceof LightUnit ? part.getParent() : part;
        return !done.add(group);
    }

    private Command move(EditPart part, int toX, int toY, double stepM) {
        MoveRequest request = new MoveRequest();
        request.setExact(true);
        PlanAxis axis = axis(part);
        if (axis == null) {
            request.setDelta(toX * stepM, toY * stepM);
        } else {
            double along = axis.alongM(toX, toY);
            double right = axis.rightM(toX, toY);
            boolean isAlong = Math.abs(along) >= Math.abs(right);
            double turn = Math.toRadians(axis.bearingDeg());
            double sign = Math.signum(isAlong ? along : right) * stepM;
            request.setDelta(sign * (isAlong ? Math.sin(turn) : Math.cos(turn)), sign * (isAlong ? Math.cos(turn) : -Math.sin(turn)));
        }
        return part.getCommand(request);
    }

    private PlanAxis axis(EditPart part) {
        if (!(part.getModel() instanceof Identified element)) {
            return null;
        }
        if (element instanceof Runway || element instanceof RunwayEnd) {
            List<RunwayEnd> ends = element instanceof Runway runway ? runway.getEnds() : List.of((RunwayEnd) element);
            return ends.stream().flatMap(end -> context.drawn(end).stream()).findFirst().orElse(null);
        }
        return Projects.host(element).filter(host -> !(element instanceof ApproachHost)).flatMap(context::axis).orElse(null);
    }
}
