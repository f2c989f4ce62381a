package slopewright.ui.plan.internal.tools;

import java.util.Optional;

import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.requests.CreateRequest;
import org.eclipse.gef.tools.CreationTool;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;

import slopewright.edit.AddAid;
import slopewright.edit.AddChild;
import slopewright.model.Identified;
import slopewright.siting.site.PlanPoint;
import slopewright.ui.diagram.commands.HistoryCommand;
import slopewright.ui.plan.internal.palette.Placed;

/**
 * Places what the palette offers with one click, and selects it. Without a mouse it is offered where it belongs as soon as the plan has the
 * focus: arrows lead to other places, Enter places, Escape gives up.
 */
public final class PlaceTool extends CreationTool {

    private static final double STEP_M = 10;
    private static final double SMALL_STEP_M = 1;
    private static final double LARGE_STEP_M = 100;

    private Optional<PlanPoint> offered = Optional.empty();

    /** Makes a tool; the entry of the palette tells it what it places. */
    public PlaceTool() {
        setUnloadWhenFinished(true);
    }

    @Override
    protected void performCreation(int button) {
        Command command = getCurrentCommand();
        EditPartViewer viewer = getCurrentViewer();
        eraseTargetFeedback();
        super.performCreation(button);
        if (command instanceof HistoryCommand placing) {
            select(viewer, placing);
        }
    }

    private static void select(EditPartViewer viewer, HistoryCommand command) {
        Identified child = command.edit() instanceof AddChild added ? added.child() : null;
        Identified made = command.edit() instanceof AddAid added ? added.aid() : child;
        if (made != null && viewer.getEditPartRegistry().get(made) instanceof EditPart part) {
            viewer.flush();
            viewer.select(part);
        }
    }

    @Override
    protected boolean handleFocusGained() {
        if (offered.isEmpty() && getTargetEditPart() == null) {
            PlaceRound.of(getCurrentViewer()).flatMap(round -> round.first(placed())).ifPresent(this::offer);
        }
        return super.handleFocusGained();
    }

    /** From now on it goes where the mouse is. */
    @Override
    protected boolean handleMove() {
        offered = Optional.empty();
        PlaceRound.setPlace((CreateRequest) getTargetRequest(), Optional.empty());
        return super.handleMove();
    }

    @Override
    protected boolean handleKeyDown(KeyEvent event) {
        double step = (event.stateMask & SWT.SHIFT) != 0 ? SMALL_STEP_M : (event.stateMask & SWT.MOD1) != 0 ? LARGE_STEP_M : STEP_M;
        switch (event.keyCode) {
            case SWT.ESC -> {
                eraseTargetFeedback();
                getDomain().loadDefaultTool();
            }
            case SWT.ARROW_LEFT -> arrow(-1, 0, step);
            case SWT.ARROW_RIGHT -> arrow(1, 0, step);
            case SWT.ARROW_UP -> arrow(0, 1, step);
            case SWT.ARROW_DOWN -> arrow(0, -1, step);
            case SWT.CR, SWT.KEYPAD_CR -> place();
            default -> {
                return super.handleKeyDown(event);
            }
        }
        return true;
    }

    private Placed placed() {
        return (Placed) ((CreateRequest) getTargetRequest()).getNewObject();
    }

    /** The first arrow offers a place where none was offered yet, the next ones lead on from there. */
    private void arrow(int toX, int toY, double stepM) {
        PlaceRound.of(getCurrentViewer()).ifPresent(round -> offered.map(from -> round.step(placed(), from, toX, toY, stepM))
                .or(() -> round.first(placed())).ifPresent(this::offer));
    }

    private void offer(PlanPoint place) {
        PlaceRound round = PlaceRound.of(getCurrentViewer()).orElseThrow();
        offered = Optional.of(place);
        PlaceRound.setPlace((CreateRequest) getTargetRequest(), offered);
        round.reveal(place);
        setTargetEditPart(round.target());
        showTargetFeedback();
        setCurrentCommand(getCommand());
    }

    private void place() {
        if (offered.isEmpty()) {
            arrow(0, 0, 0);
        }
        if (offered.isPresent()) {
            setCurrentCommand(getCommand());
            performCreation(1);
            setState(STATE_TERMINAL);
            handleFinished();
        }
    }

    @Override
    public void deactivate() {
        offered = Optional.empty();
        super.deactivate();
    }
}
