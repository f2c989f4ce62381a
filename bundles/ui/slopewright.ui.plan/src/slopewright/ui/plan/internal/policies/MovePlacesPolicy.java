package slopewright.ui.plan.internal.policies;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

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
import slopewright.model.Identified;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.siting.site.PlanPlane;
import slopewright.ui.diagram.commands.HistoryCommand;
import slopewright.ui.diagram.figures.ReadoutFigure.Line;
import slopewright.ui.diagram.policies.MoveRequest;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.Readings;
import slopewright.ui.plan.internal.figures.Marks;
import slopewright.ui.trial.TrialVerdict;

/**
 * Moves an element by its places: a ground level, the edge of a taxiway, a helipad. What all rules say of the drop follows the mouse.
 *
 * @param <T> the type of the element
 */
public final class MovePlacesPolicy<T extends Identified> extends AbstractEditPolicy {
    private final PlanContext context;
    private final T element;
    private final Function<T, List<Place>> places;
    private final MoveFeedback feedback;
    private final TrialVerdict verdict;
    private Optional<MoveRequest> shown = Optional.empty();

    /**
     * Makes the policy of an element.
     *
     * @param context the plan
     * @param element the element
     * @param places  its places
     */
    public MovePlacesPolicy(PlanContext context, T element, Function<T, List<Place>> places) {
        this.context = context;
        this.element = element;
        this.places = places;
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
        if (!(request instanceof MoveRequest move) || context.plane().isEmpty()) {
            return null;
        }
        List<RecordedEdit> edits = MovedPlaces.edits(places.apply(element), moved(context.plane().get(), move));
        return edits.isEmpty() ? null : new HistoryCommand(Compound.of("Move", edits));
    }

    private List<Place> moved(PlanPlane plane, MoveRequest move) {
        List<Place> copies = new ArrayList<>(EcoreUtil.copyAll(places.apply(element)));
        copies.forEach(place -> plane.toPlace(plane.toPlane(place).moved(move.byX(), move.byY()), place));
        return copies;
    }

    @Override
    public void showSourceFeedback(Request request) {
        if (!(request instanceof MoveRequest move) || context.plane().isEmpty() || places.apply(element).isEmpty()) {
            return;
        }
        List<Place> moved = moved(context.plane().get(), move);
        List<ScenePoint> points = moved.stream().flatMap(place -> context.places().point(place).stream()).toList();
        Marks marks = new Marks(element.getId());
        marks.line(Style.line(Ink.WHEELS, 0.5), points);
        points.forEach(place -> marks.disc(place, 1.1, Style.line(Ink.WHEELS, 0.4)));
        shown = Optional.of(move);
        String by = Messages.get("move.by", Readings.length(Math.hypot(move.byX(), move.byY())));
        verdict.ask(List.of(move.byX(), move.byY()), by, project -> Compound.of("Move",
                MovedPlaces.edits(places.apply(of(project)), moved)));
        List<Line> lines = new ArrayList<>(List.of(Line.of(by)));
        lines.addAll(Readings.of(verdict));
        points.stream().findFirst().ifPresent(at -> feedback.show(marks.list(), lines, at));
    }

    @SuppressWarnings("unchecked")
    private T of(Project project) {
        return (T) Ids.find(project, element.getId()).orElseThrow();
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
