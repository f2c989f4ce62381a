package slopewright.ui.plan.internal.policies;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.edit.MovePlaces;
import slopewright.edit.MoveThreshold;
import slopewright.geometry.Angles;
import slopewright.model.Place;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.siting.site.PlanAxis;
import slopewright.siting.site.PlanPoint;
import slopewright.ui.diagram.figures.ReadoutFigure.Line;
import slopewright.ui.diagram.policies.MoveRequest;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.Readings;
import slopewright.ui.plan.internal.figures.Marks;
import slopewright.ui.plan.internal.figures.RunwayMarks;
import slopewright.ui.plan.internal.places.PlanPlaces;

/**
 * Moves a runway by both thresholds, or one of its ends: that along the centre line and, where the user holds the key for it, freely, so
 * that the runway turns. What belongs to an end is placed from its threshold and moves along; what was measured stays.
 */
public final class RunwayMover {

    private static final double LEAST_APART_M = 1;

    private RunwayMover() {
    }

    /** Returns the mover of whole runways. */
    public static Mover<Runway> whole() {
        return RunwayMover::drop;
    }

    /** Returns the mover of runway ends. */
    public static Mover<RunwayEnd> end() {
        return RunwayMover::drop;
    }

    private static List<Place> thresholds(Runway runway) {
        return runway.getEnds().stream().map(RunwayEnd::getThreshold).filter(place -> place != null).toList();
    }

    private static Optional<Drop<Runway>> drop(PlanContext context, Runway runway, MoveRequest move) {
        Optional<PlanAxis> axis = runway.getEnds().stream().flatMap(end -> context.drawn(end).stream()).findFirst();
        if (axis.isEmpty() || move.byX() == 0 && move.byY() == 0) {
            return Optional.empty();
        }
        List<Place> moved = new ArrayList<>(EcoreUtil.copyAll(thresholds(runway)));
        PlacesMover.move(context, thresholds(runway), moved, move);
        PlanAxis ghost = new PlanAxis(axis.get().origin().moved(move.byX(), move.byY()), axis.get().bearingDeg());
        double length = RunwayMarks.lengthM(context, runway);
        double from = -runway.getEnds().stream().filter(end -> context.drawn(end).isPresent()).findFirst().map(RunwayMarks::displacedM)
                .orElse(0.0);
        List<Line> lines = new ArrayList<>(List.of(Line.of(Messages.get("move.runway-along"))));
        if (runway.getEnds().stream().anyMatch(end -> end.getThresholdElevationM() != null)) {
            lines.add(Line.warning(Messages.get("move.heights-stay")));
        }
        return Optional.of(new Drop<>(List.of(move.byX(), move.byY()), PlacesMover.by(move), lines,
                marks -> ghost(marks, runway, ghost, from, from + length), pointer(move, PlanPlaces.point(ghost, 0, 0)),
                found -> MovePlaces.of("Move runway", thresholds(found), moved)));
    }

    private static Optional<Drop<RunwayEnd>> drop(PlanContext context, RunwayEnd end, MoveRequest move) {
        Optional<ScenePoint> at = context.places().point(end.getThreshold());
        Optional<PlanAxis> axis = context.drawn(end);
        if (at.isEmpty() || axis.isEmpty() || !(end.eContainer() instanceof Runway runway)) {
            return Optional.empty();
        }
        double along = axis.get().alongM(move.byX(), move.byY());
        double right = move.isFree() || move.isExact() ? axis.get().rightM(move.byX(), move.byY()) : 0;
        PlanPoint from = new PlanPoint(at.get().x(), at.get().y());
        PlanPoint to = new PlanAxis(from, axis.get().bearingDeg()).toPlane(along, right);
        Optional<ScenePoint> far = runway.getEnds().stream().filter(other -> other != end)
                .flatMap(other -> context.places().point(other.getThreshold()).stream()).findFirst();
        double apart = far.map(place -> Math.hypot(place.x() - to.eastM(), place.y() - to.northM())).orElse(Double.MAX_VALUE);
        if (along == 0 && right == 0 || apart < LEAST_APART_M) {
            return Optional.empty();
        }
        Place moved = EcoreUtil.copy(end.getThreshold());
        context.plane().orElseThrow().toPlace(to, moved);
        List<Line> lines = new ArrayList<>();
        PlanAxis ghost = far.map(place -> toward(to, place)).orElseGet(() -> new PlanAxis(to, axis.get().bearingDeg()));
        far.ifPresent(place -> lines.add(Line.of(Messages.get("move.between", Readings.length(apart)))));
        lines.add(Line.of(Messages.get("move.end-along")));
        if (end.getThresholdElevationM() != null) {
            lines.add(Line.warning(Messages.get("move.heights-stay")));
        }
        double length = far.isPresent() ? apart : RunwayMarks.lengthM(context, runway);
        return Optional.of(new Drop<>(List.of(along, right), Readings.shifts(along, right), lines,
                marks -> ghost(marks, runway, ghost, -RunwayMarks.displacedM(end), length), pointer(move, PlanPlaces.point(to)),
                found -> MoveThreshold.to(found, moved)));
    }

    private static PlanAxis toward(PlanPoint from, ScenePoint to) {
        return new PlanAxis(from, Angles.normaliseBearingDeg(Math.toDegrees(Math.atan2(to.x() - from.eastM(), to.y() - from.northM()))));
    }

    private static void ghost(Marks marks, Runway runway, PlanAxis axis, double fromM, double toM) {
        double half = RunwayMarks.widthM(runway) / 2;
        marks.box(Style.line(Ink.WHEELS, 0.5), axis, fromM, -half, toM, half);
        marks.disc(PlanPlaces.point(axis, 0, 0), 1.1, Style.line(Ink.WHEELS, 0.4));
    }

    /** What is said of something long is said where the mouse is. */
    static ScenePoint pointer(MoveRequest move, ScenePoint otherwise) {
        return move.from().map(from -> new ScenePoint(from.x() + move.byX(), from.y() + move.byY())).orElse(otherwise);
    }
}
