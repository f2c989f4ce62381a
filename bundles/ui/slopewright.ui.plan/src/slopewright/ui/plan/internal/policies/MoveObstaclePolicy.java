package slopewright.ui.plan.internal.policies;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.Request;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.editpolicies.AbstractEditPolicy;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.edit.Compound;
import slopewright.edit.RecordedEdit;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.Attempt;
import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.model.Obstacle;
import slopewright.model.Place;
import slopewright.model.util.Ids;
import slopewright.siting.site.PlanPlane;
import slopewright.ui.MessageTexts;
import slopewright.ui.diagram.commands.HistoryCommand;
import slopewright.ui.diagram.figures.ReadoutFigure.Line;
import slopewright.ui.diagram.policies.MoveRequest;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.Readings;
import slopewright.ui.plan.internal.figures.Marks;
import slopewright.ui.plan.internal.places.Obstruction;
import slopewright.ui.trial.TrialVerdict;

/** Moves an obstacle over the ground; how it would stand against the obstacle surfaces follows the mouse. */
public final class MoveObstaclePolicy extends AbstractEditPolicy {

    private final PlanContext context;
    private final Obstacle obstacle;
    private final MoveFeedback feedback;
    private final TrialVerdict verdict;
    private Optional<MoveRequest> shown = Optional.empty();

    /** Makes the policy of an obstacle. */
    public MoveObstaclePolicy(PlanContext context, Obstacle obstacle) {
        this.context = context;
        this.obstacle = obstacle;
        this.feedback = new MoveFeedback(context.diagram());
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
        if (!(request instanceof MoveRequest move) || context.plane().isEmpty() || obstacle.getPlaces().isEmpty()) {
            return null;
        }
        List<RecordedEdit> edits = MovedPlaces.edits(obstacle.getPlaces(),
                moved(context.plane().get(), move).getPlaces());
        return edits.isEmpty() ? null : new HistoryCommand(Compound.of("Move obstacle", edits));
    }

    private Obstacle moved(PlanPlane plane, MoveRequest move) {
        Obstacle copy = EcoreUtil.copy(obstacle);
        for (Place place : copy.getPlaces()) {
            plane.toPlace(plane.toPlane(place).moved(move.byX(), move.byY()), place);
        }
        return copy;
    }

    @Override
    public void showSourceFeedback(Request request) {
        if (!(request instanceof MoveRequest move) || context.plane().isEmpty()) {
            return;
        }
        List<ScenePoint> places = context.places().points(obstacle).stream()
                .map(place -> new ScenePoint(place.x() + move.byX(), place.y() + move.byY())).toList();
        if (places.isEmpty()) {
            return;
        }
        Marks marks = new Marks(obstacle.getId());
        marks.line(Style.line(Ink.WHEELS, 0.5), places);
        places.forEach(place -> marks.disc(place, 1.1, Style.line(Ink.WHEELS, 0.4)));
        shown = Optional.of(move);
        Obstacle moved = moved(context.plane().get(), move);
        verdict.ask(List.of(move.byX(), move.byY()), by(move), project -> Compound.of("Move obstacle",
                MovedPlaces.edits(((Obstacle) Ids.find(project, obstacle.getId()).orElseThrow()).getPlaces(), moved.getPlaces())));
        feedback.show(marks.list(), lines(move), places.get(0));
    }

    private static String by(MoveRequest move) {
        return Messages.get("move.by", Readings.length(Math.hypot(move.byX(), move.byY())));
    }

    private List<Line> lines(MoveRequest move) {
        List<Line> lines = new ArrayList<>();
        lines.add(Line.of(by(move)));
        Obstacle moved = moved(context.plane().orElseThrow(), move);
        lines.addAll(comparison(moved));
        lines.addAll(Readings.of(verdict));
        return lines;
    }

    /**
     * Says how the moved obstacle would stand against the surface that it is worst for, and why it cannot be compared; a tick only where it
     * was compared with the surface of every aid.
     */
    private List<Line> comparison(Obstacle moved) {
        Optional<Obstruction> worst = Optional.empty();
        boolean whole = true;
        Set<String> reasons = new LinkedHashSet<>();
        for (AidEvaluation aid : context.obstructions().map(all -> all.evaluation().aids()).orElse(List.of())) {
            Attempt<Optional<ObstacleComparison>> found = aid.compare(moved);
            whole &= found.value().isPresent();
            if (aid.obstacles().value().isPresent() && found.reason().isPresent()) {
                reasons.add(MessageTexts.of(found.reason().get()));
            }
            Optional<Obstruction> here = found.value().flatMap(inside -> inside).map(inside -> new Obstruction(inside, aid));
            worst = Obstruction.worse(worst, here);
        }
        List<Line> lines = new ArrayList<>();
        reasons.forEach(reason -> lines.add(Line.warning(Messages.get("read.uncompared", reason))));
        if (worst.isPresent()) {
            boolean through = worst.get().excessM() > 0;
            String text = Messages.get(through ? "tip.through" : "tip.below", Readings.length(Math.abs(worst.get().excessM())),
                    MessageTexts.label(worst.get().aid().aid()));
            lines.add(through || whole ? Line.of(text, !through) : Line.of(text));
        } else if (whole) {
            lines.add(Line.of(Messages.get("move.outside"), true));
        }
        return lines;
    }

    /** Returns what all rules say of the drag that is under way. */
    public TrialVerdict verdict() {
        return verdict;
    }

    @Override
    public void eraseSourceFeedback(Request request) {
        if (request instanceof MoveRequest) {
            feedback.erase();
            verdict.end();
            shown = Optional.empty();
        }
    }

    @Override
    public void deactivate() {
        feedback.erase();
        verdict.end();
        super.deactivate();
    }
}
