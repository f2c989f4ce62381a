package slopewright.ui.plan.internal.policies;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

import org.eclipse.gef.EditPart;
import org.eclipse.gef.Request;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.editpolicies.AbstractEditPolicy;

import slopewright.drawing.Ink;
import slopewright.drawing.Mark;
import slopewright.drawing.Style;
import slopewright.edit.MoveAid;
import slopewright.edit.MoveUnits;
import slopewright.edit.RecordedEdit;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.LightUnit;
import slopewright.model.Runway;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;
import slopewright.siting.site.PlanAxis;
import slopewright.ui.diagram.commands.HistoryCommand;
import slopewright.ui.diagram.policies.MoveRequest;
import slopewright.ui.plan.internal.MoveTrial;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.Readings;
import slopewright.ui.plan.internal.figures.AidMarks;
import slopewright.ui.plan.internal.figures.Marks;
import slopewright.ui.diagram.figures.ReadoutFigure.Line;
import slopewright.ui.plan.internal.figures.UnitMarks;

/**
 * Moves all units of an aid, or one of them, along the runway and, where the user holds the key for it, across. What the layout would give
 * follows the mouse. Near the distance that the rule set gives a row snaps to it.
 */
public final class MoveUnitsPolicy extends AbstractEditPolicy {

    private static final double SNAP_PX = 6;
    private static final double MOUSE_STEPS_PER_M = 10;

    private final PlanContext context;
    private final ApproachAid aid;
    private final Supplier<List<LightUnit>> units;
    private final MoveFeedback feedback;
    private Optional<MoveTrial> trial = Optional.empty();
    private OptionalDouble solvedM = OptionalDouble.empty();

    private record Shift(double alongM, double rightM, boolean snapped) {
    }

    /**
     * Makes the policy.
     *
     * @param context the context
     * @param aid     the aid
     * @param units   the units of it that move
     */
    public MoveUnitsPolicy(PlanContext context, ApproachAid aid, Supplier<List<LightUnit>> units) {
        this.context = context;
        this.aid = aid;
        this.units = units;
        this.feedback = new MoveFeedback(context.diagram());
    }

    @Override
    public boolean understandsRequest(Request request) {
        return RequestConstants.REQ_MOVE.equals(request.getType());
    }

    @Override
    public EditPart getTargetEditPart(Request request) {
        return understandsRequest(request) ? getHost() : null;
    }

    @Override
    public Command getCommand(Request request) {
        if (!(request instanceof MoveRequest move)) {
            return null;
        }
        return Projects.host(aid).flatMap(context::axis).map(axis -> new HistoryCommand(edit(shift(axis, move)))).orElse(null);
    }

    private boolean isWhole() {
        return units.get().size() == aid.getUnits().size();
    }

    private RecordedEdit edit(Shift shift) {
        return isWhole() && units.get().size() > 1 ? MoveAid.by(aid, shift.alongM(), shift.rightM())
                : MoveUnits.by(units.get(), shift.alongM(), shift.rightM());
    }

    private Shift shift(PlanAxis axis, MoveRequest move) {
        double along = axis.alongM(move.byX(), move.byY());
        double right = axis.rightM(move.byX(), move.byY());
        if (move.isExact()) {
            return new Shift(along, right, false);
        }
        double snapM = SNAP_PX / context.diagram().view().scale();
        double toSolved = solvedM.orElse(Double.NaN) - context.layout(aid).map(Siting::distanceM).orElse(Double.NaN);
        boolean snapped = Math.abs(along - toSolved) < snapM;
        return new Shift(snapped ? toSolved : rounded(along), move.isFree() ? rounded(right) : 0, snapped);
    }

    private static double rounded(double valueM) {
        return Math.round(valueM * MOUSE_STEPS_PER_M) / MOUSE_STEPS_PER_M;
    }

    @Override
    public void showSourceFeedback(Request request) {
        Optional<ApproachHost> host = Projects.host(aid);
        Optional<PlanAxis> axis = host.flatMap(context::axis);
        if (!(request instanceof MoveRequest move) || axis.isEmpty()) {
            return;
        }
        if (trial.isEmpty()) {
            MoveTrial fresh = new MoveTrial(context, aid, units.get());
            trial = Optional.of(fresh);
            solvedM = isWhole() ? fresh.solvedDistanceM() : OptionalDouble.empty();
        }
        Shift shift = shift(axis.get(), move);
        MoveTrial.Result result = trial.get().at(shift.alongM(), shift.rightM());
        List<LightUnit> moved = units.get();
        LightUnit lead = moved.get(0);
        double along = at(lead.getAlongM()) + shift.alongM();
        double right = at(lead.getRightM()) + shift.rightM();
        feedback.show(marks(axis.get(), host.get(), shift, result), lines(host.get(), shift, result, right),
                PlanContext.point(axis.get(), along, right));
    }

    private static double at(Double placeM) {
        return placeM == null ? 0 : placeM;
    }

    private List<Mark> marks(PlanAxis axis, ApproachHost host, Shift shift, MoveTrial.Result result) {
        Marks marks = new Marks(aid.getId());
        result.siting().flatMap(Siting::surface).ifPresent(surface -> AidMarks.surface(axis, surface.geometry(), "").forEach(marks::add));
        double side = Projects.runway(host).map(Runway::getWidthM).orElse(0.0) / 2;
        double sign = at(units.get().get(0).getRightM()) < 0 ? 1 : -1;
        double lead = at(units.get().get(0).getAlongM()) + shift.alongM();
        double off = sign * (side + 14 / context.diagram().view().scale());
        double tick = 5 / context.diagram().view().scale();
        Style thin = Style.line(Ink.WHEELS, 0.25);
        marks.stroke(thin, axis, 0, off, lead, off);
        marks.stroke(thin, axis, 0, off - tick, 0, off + tick);
        marks.stroke(thin, axis, lead, off - tick, lead, off + tick);
        if (shift.snapped()) {
            marks.stroke(Style.dashed(Ink.GREEN, 0.4), axis, lead, -side * 4, lead, side * 4);
        }
        for (LightUnit unit : units.get()) {
            double along = at(unit.getAlongM()) + shift.alongM();
            UnitMarks.ghost(marks, context.diagram().view(), axis, along, at(unit.getRightM()) + shift.rightM(), Ink.WHEELS);
        }
        return marks.list();
    }

    private List<Line> lines(ApproachHost host, Shift shift, MoveTrial.Result result, double rightM) {
        List<Line> lines = new ArrayList<>();
        String across = shift.rightM() == 0 ? "" : ", " + Readings.shift(shift.rightM()) + " right";
        String moved = Readings.shift(shift.alongM()) + " along" + across;
        lines.add(Line.of(shift.snapped() ? moved + "  at the solved distance" : moved));
        result.siting().ifPresent(siting -> lines.addAll(Readings.of(host, siting, result.excessM())));
        result.problem().ifPresent(problem -> lines.add(Line.of(problem, false)));
        lines.add(Line.of(Readings.side(rightM)));
        return lines;
    }

    @Override
    public void eraseSourceFeedback(Request request) {
        if (request instanceof MoveRequest) {
            feedback.erase();
            trial = Optional.empty();
            solvedM = OptionalDouble.empty();
        }
    }

    @Override
    public void deactivate() {
        feedback.erase();
        super.deactivate();
    }
}
