package slopewright.ui.plan.internal.policies;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.edit.TurnDirection;
import slopewright.geometry.Angles;
import slopewright.model.ApproachDirection;
import slopewright.model.Helipad;
import slopewright.model.Place;
import slopewright.siting.site.PlanAxis;
import slopewright.ui.MessageTexts;
import slopewright.ui.diagram.figures.ReadoutFigure.Line;
import slopewright.ui.diagram.policies.MoveRequest;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.figures.Marks;
import slopewright.ui.plan.internal.places.PlanPlaces;

/** Moves helipads, and turns their approach directions about them: to whole degrees, without snapping to tenths. */
public final class PadMover {

    private static final double WHOLE_DEG = 1;
    private static final double TENTH_DEG = 0.1;
    private static final double LEAST_ARM_M = 0.5;

    private PadMover() {
    }

    /** Returns the mover of helipads. */
    public static Mover<Helipad> whole() {
        return PlacesMover.of("Move helipad", PadMover::places, (context, pad) -> {
            List<Line> lines = new ArrayList<>();
            if (!pad.getDirections().isEmpty()) {
                lines.add(Line.of(Messages.get("move.pad-along")));
            }
            if (pad.getElevationM() != null) {
                lines.add(Line.warning(Messages.get("move.heights-stay")));
            }
            return lines;
        });
    }

    private static List<Place> places(Helipad pad) {
        return pad.getPlace() == null ? List.of() : List.of(pad.getPlace());
    }

    /** Returns the mover that turns approach directions. */
    public static Mover<ApproachDirection> direction() {
        return PadMover::turn;
    }

    private static Optional<Drop<ApproachDirection>> turn(PlanContext context, ApproachDirection direction, MoveRequest move) {
        Optional<PlanAxis> axis = context.axis(direction);
        Double stood = direction.getTrueBearingDeg();
        if (axis.isEmpty() || stood == null) {
            return Optional.empty();
        }
        Optional<Double> turn = move.isExact() ? Optional.of(move.byX() + move.byY()) : turnDeg(axis.get(), move);
        double step = move.isExact() || move.isUnsnapped() ? TENTH_DEG : WHOLE_DEG;
        Optional<Double> bearing = turn.map(by -> Angles.normaliseBearingDeg(Math.round((stood + by) / step) * step))
                .map(deg -> Math.round(deg * 1e6) / 1e6).filter(deg -> !deg.equals(stood));
        return bearing.map(deg -> {
            PlanAxis ghost = new PlanAxis(axis.get().origin(), axis.get().bearingDeg() + deg - stood);
            return new Drop<>(List.of(deg), Messages.get("move.turned", MessageTexts.renderer().fixed(deg, 1)),
                    List.of(Line.of(Messages.get("move.turned-along"))), marks -> ghost(context, marks, ghost),
                    RunwayMover.pointer(move, PlanPlaces.point(ghost, 0, 0)), found -> TurnDirection.to(found, deg));
        });
    }

    /** By how much the arrow turns when its point under the mouse goes along; empty over the hover point itself. */
    private static Optional<Double> turnDeg(PlanAxis axis, MoveRequest move) {
        if (move.from().isEmpty()) {
            return Optional.empty();
        }
        double x = move.from().get().x() - axis.origin().eastM();
        double y = move.from().get().y() - axis.origin().northM();
        if (Math.hypot(x, y) < LEAST_ARM_M || Math.hypot(x + move.byX(), y + move.byY()) < LEAST_ARM_M) {
            return Optional.empty();
        }
        return Optional.of(Math.toDegrees(Math.atan2(x + move.byX(), y + move.byY()) - Math.atan2(x, y)));
    }

    private static void ghost(PlanContext context, Marks marks, PlanAxis axis) {
        double px = 1 / context.diagram().view().scale();
        ScenePoint tail = PlanPlaces.point(axis, -90 * px, 0);
        marks.line(Style.line(Ink.WHEELS, 0.5), List.of(tail, PlanPlaces.point(axis, 0, 0)));
        marks.disc(PlanPlaces.point(axis, 0, 0), 1.1, Style.line(Ink.WHEELS, 0.4));
    }
}
