package slopewright.ui.plan.internal.policies;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import org.eclipse.gef.EditPart;
import org.eclipse.gef.Request;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.editpolicies.AbstractEditPolicy;

import slopewright.edit.MoveAid;
import slopewright.edit.MoveUnits;
import slopewright.edit.RecordedEdit;
import slopewright.evaluation.Attempt;
import slopewright.model.AidSide;
import slopewright.model.ApproachAid;
import slopewright.model.LightUnit;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.site.PlanAxis;
import slopewright.ui.diagram.commands.HistoryCommand;
import slopewright.ui.diagram.policies.MoveRequest;
import slopewright.ui.plan.internal.MoveTrial;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.Readings;
import slopewright.ui.plan.internal.TrialFigures;
import slopewright.ui.plan.internal.grid.Snapping;
import slopewright.ui.plan.internal.grid.UnitSnaps;
import slopewright.ui.preferences.Preferences;
import slopewright.ui.trial.TrialVerdict;

/**
 * Moves all units of an aid, or some of them, along the runway and, where the user holds the key for it, across. What the layout would
 * give follows the mouse. Units snap while that is switched on and the user does not hold the key against it.
 */
public final class MoveUnitsPolicy extends AbstractEditPolicy {

    private final PlanContext context;
    private final ApproachAid aid;
    private final Supplier<List<LightUnit>> units;
    private final MoveGuides guides;
    private Optional<MoveTrial> trial = Optional.empty();
    private Optional<UnitSnaps> snaps = Optional.empty();
    private final TrialVerdict verdict;
    private Optional<MoveRequest> shown = Optional.empty();

    /**
     * How far units go, and what they have snapped to.
     *
     * @param alongM metres in the landing direction
     * @param rightM metres to the right, of the side that was taken
     * @param along  what the leading unit has snapped to along the runway
     * @param right  what it has snapped to across
     */
    record Shift(double alongM, double rightM, Optional<Snapping.Target> along, Optional<Snapping.Target> right) {
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
        this.guides = new MoveGuides(context, aid);
        this.verdict = new TrialVerdict(context.document(), () -> shown.ifPresent(this::showSourceFeedback));
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
        if (!(request instanceof MoveRequest move) || units.get().isEmpty()) {
            return null;
        }
        return Projects.host(aid).flatMap(context::axis).map(axis -> new HistoryCommand(edit(shift(axis, move), isTakenLeft(move))))
                .orElse(null);
    }

    private boolean isWhole() {
        return units.get().size() == aid.getUnits().size() && units.get().size() > 1;
    }

    /** Returns the unit that was taken, of a whole aid the first one on the side that was taken. */
    private LightUnit lead(MoveRequest move) {
        List<LightUnit> moved = units.get();
        return move.grip() instanceof LightUnit unit && moved.contains(unit) ? unit : moved.get(0);
    }

    private boolean isTakenLeft(MoveRequest move) {
        return isLeft(lead(move));
    }

    static boolean isLeft(LightUnit unit) {
        return unit.getRightM() != null && unit.getRightM() < 0;
    }

    /** Returns whether a unit goes the other way across, as the mirror of the side that was taken. */
    private boolean isMirrored(LightUnit unit, boolean takenLeft) {
        return isWhole() && aid.getSide() == AidSide.BOTH && at(unit.getRightM()) != 0 && isLeft(unit) != takenLeft;
    }

    private RecordedEdit edit(Shift shift, boolean takenLeft) {
        return isWhole() ? MoveAid.by(aid, shift.alongM(), shift.rightM(), takenLeft)
                : MoveUnits.by(units.get(), shift.alongM(), shift.rightM());
    }

    /** Returns what dropping does, for a copy of the project. */
    private RecordedEdit dropOn(Project project, Shift shift, boolean takenLeft) {
        List<LightUnit> copies = units.get().stream().map(unit -> (LightUnit) Ids.find(project, unit.getId()).orElseThrow()).toList();
        return isWhole() ? MoveAid.by((ApproachAid) copies.get(0).eContainer(), shift.alongM(), shift.rightM(), takenLeft)
                : MoveUnits.by(copies, shift.alongM(), shift.rightM());
    }

    /** Returns what all rules say of the drag that is under way. */
    public TrialVerdict verdict() {
        return verdict;
    }

    private Shift shift(PlanAxis axis, MoveRequest move) {
        double along = axis.alongM(move.byX(), move.byY());
        double right = axis.rightM(move.byX(), move.byY());
        if (move.isExact()) {
            return new Shift(along, right, Optional.empty(), Optional.empty());
        }
        boolean snapping = context.settings().isSnap() && !move.isUnsnapped() && snaps.isPresent();
        LightUnit lead = lead(move);
        double fromAlong = at(lead.getAlongM());
        double fromRight = at(lead.getRightM());
        Optional<Snapping.Target> onAlong = snapping ? snaps.get().along(fromAlong + along) : Optional.empty();
        Optional<Snapping.Target> onRight = snapping && move.isFree() ? snaps.get().right(fromRight + right) : Optional.empty();
        double byAlong = onAlong.map(target -> target.valueM() - fromAlong).orElse(rounded(along));
        double byRight = onRight.map(target -> target.valueM() - fromRight).orElse(move.isFree() ? rounded(right) : 0);
        return new Shift(byAlong, byRight, onAlong, onRight);
    }

    private static double rounded(double valueM) {
        double step = Preferences.snapStepM();
        return Math.round(Math.rint(valueM / step) * step * 1e6) / 1e6;
    }

    static double at(Double placeM) {
        return placeM == null ? 0 : placeM;
    }

    @Override
    public void showSourceFeedback(Request request) {
        Optional<PlanAxis> axis = Projects.host(aid).flatMap(context::axis);
        if (!(request instanceof MoveRequest move) || axis.isEmpty() || units.get().isEmpty()) {
            return;
        }
        boolean takenLeft = isTakenLeft(move);
        LightUnit lead = lead(move);
        if (trial.isEmpty()) {
            MoveTrial fresh = new MoveTrial(context.evaluation(aid), aid, units.get(), takenLeft);
            trial = Optional.of(fresh);
            snaps = Optional.of(new UnitSnaps(context, aid, leadFirst(lead), fresh.solved()));
        }
        Shift shift = shift(axis.get(), move);
        Attempt<TrialFigures> result = trial.get().at(shift.alongM(), shift.rightM());
        shown = Optional.of(move);
        verdict.ask(List.of(shift.alongM(), shift.rightM()), Readings.shifts(shift.alongM(), shift.rightM()),
                project -> dropOn(project, shift, takenLeft));
        guides.show(axis.get(), lead, leadFirst(lead), shift, unit -> isMirrored(unit, takenLeft), result, snaps.get(),
                Readings.of(verdict));
    }

    private List<LightUnit> leadFirst(LightUnit lead) {
        List<LightUnit> moved = new ArrayList<>(units.get());
        moved.remove(lead);
        moved.add(0, lead);
        return moved;
    }

    @Override
    public void eraseSourceFeedback(Request request) {
        if (request instanceof MoveRequest) {
            guides.erase();
            verdict.end();
            shown = Optional.empty();
            trial = Optional.empty();
            snaps = Optional.empty();
        }
    }

    @Override
    public void deactivate() {
        guides.erase();
        verdict.end();
        super.deactivate();
    }
}
