package slopewright.ui.plan.internal.policies;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.emf.ecore.EAttribute;
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
import slopewright.edit.SetAttribute;
import slopewright.evaluation.obstacles.SurveyedShape;
import slopewright.geometry.Penetration;
import slopewright.model.ApproachAid;
import slopewright.model.Obstacle;
import slopewright.model.Place;
import slopewright.model.SlopewrightPackage;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SurfacePlan;
import slopewright.siting.site.PlanPlane;
import slopewright.siting.site.SiteFrame;
import slopewright.ui.diagram.commands.HistoryCommand;
import slopewright.ui.diagram.figures.ReadoutFigure.Line;
import slopewright.ui.diagram.policies.MoveRequest;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.Readings;
import slopewright.ui.plan.internal.figures.Marks;
import slopewright.ui.plan.internal.figures.ObstacleMarks;

/** Moves an obstacle over the ground; how it would stand against the obstacle surfaces follows the mouse. */
public final class MoveObstaclePolicy extends AbstractEditPolicy {

    private static final List<EAttribute> COORDINATES = List.of(SlopewrightPackage.Literals.PLACE__LATITUDE_DEG,
            SlopewrightPackage.Literals.PLACE__LONGITUDE_DEG, SlopewrightPackage.Literals.PLACE__EAST_M,
            SlopewrightPackage.Literals.PLACE__NORTH_M);

    private final PlanContext context;
    private final Obstacle obstacle;
    private final MoveFeedback feedback;

    /** Makes the policy of an obstacle. */
    public MoveObstaclePolicy(PlanContext context, Obstacle obstacle) {
        this.context = context;
        this.obstacle = obstacle;
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
        if (!(request instanceof MoveRequest move) || context.plane().isEmpty() || obstacle.getPlaces().isEmpty()) {
            return null;
        }
        Obstacle moved = moved(context.plane().get(), move);
        List<RecordedEdit> edits = new ArrayList<>();
        for (int i = 0; i < moved.getPlaces().size(); i++) {
            Place from = obstacle.getPlaces().get(i);
            Place to = moved.getPlaces().get(i);
            for (EAttribute coordinate : COORDINATES) {
                if (to.eGet(coordinate) != null && !to.eGet(coordinate).equals(from.eGet(coordinate))) {
                    edits.add(SetAttribute.of(from, coordinate, to.eGet(coordinate)));
                }
            }
        }
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
        List<ScenePoint> places = ObstacleMarks.places(context, obstacle).stream()
                .map(place -> new ScenePoint(place.x() + move.byX(), place.y() + move.byY())).toList();
        if (places.isEmpty()) {
            return;
        }
        Marks marks = new Marks(obstacle.getId());
        marks.line(Style.line(Ink.WHEELS, 0.5), places);
        places.forEach(place -> marks.disc(place, 1.1, Style.line(Ink.WHEELS, 0.4)));
        feedback.show(marks.list(), lines(move), places.get(0));
    }

    private List<Line> lines(MoveRequest move) {
        List<Line> lines = new ArrayList<>();
        lines.add(Line.of(Messages.get("move.by", Readings.length(Math.hypot(move.byX(), move.byY())))));
        Obstacle moved = moved(context.plane().orElseThrow(), move);
        OptionalDouble worst = Projects.aids(context.project()).stream().flatMap(aid -> excess(aid, moved).stream())
                .mapToDouble(Double::doubleValue).max();
        if (worst.isEmpty()) {
            lines.add(Line.of(Messages.get("move.outside"), true));
        } else if (worst.getAsDouble() > 0) {
            lines.add(Line.of(Messages.get("move.through", Readings.length(worst.getAsDouble())), false));
        } else {
            lines.add(Line.of(Messages.get("move.below", Readings.length(-worst.getAsDouble())), true));
        }
        return lines;
    }

    private Optional<Double> excess(ApproachAid aid, Obstacle moved) {
        Optional<SurfacePlan> surface = context.layout(aid).flatMap(Siting::surface);
        Optional<SiteFrame> frame = Projects.host(aid).flatMap(PlanContext::frame);
        try {
            return surface.isEmpty() || frame.isEmpty() ? Optional.empty()
                    : SurveyedShape.of(moved, frame.get()).compare(surface.get().geometry()).map(Penetration::excessM);
        } catch (SitingException e) {
            return Optional.empty();
        }
    }

    @Override
    public void eraseSourceFeedback(Request request) {
        if (request instanceof MoveRequest) {
            feedback.erase();
        }
    }

    @Override
    public void deactivate() {
        feedback.erase();
        super.deactivate();
    }
}
