package slopewright.ui.plan.internal.image;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.drawing.scene.ScenePoint;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.siting.site.PlanAxis;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.figures.RunwayMarks;
import slopewright.ui.plan.internal.places.PlanPlaces;

/** Places of the plan whose coordinates are known: thresholds, the corners of runways and the middles of helipads. */
final class KnownPoints {

    private static final double REACH_PX = 9;

    private KnownPoints() {
    }

    /** Returns the known place near a place, else that place itself. */
    static ScenePoint near(PlanContext context, ScenePoint place) {
        double reach = REACH_PX / context.diagram().view().scale();
        return all(context).stream().filter(first -> distance(first, place) <= reach)
                .min((first, second) -> Double.compare(distance(first, place), distance(second, place))).orElse(place);
    }

    private static double distance(ScenePoint first, ScenePoint second) {
        return Math.hypot(first.x() - second.x(), first.y() - second.y());
    }

    private static List<ScenePoint> all(PlanContext context) {
        List<ScenePoint> points = new ArrayList<>();
        if (context.project().getAerodrome() == null) {
            return points;
        }
        context.project().getAerodrome().getHelipads().forEach(pad -> context.places().point(pad.getPlace()).ifPresent(points::add));
        for (Runway runway : context.project().getAerodrome().getRunways()) {
            double half = RunwayMarks.widthM(runway) / 2;
            for (RunwayEnd end : runway.getEnds()) {
                Optional<PlanAxis> axis = context.axis(end);
                axis.ifPresent(frame -> points.add(PlanPlaces.point(frame, 0, 0)));
                axis.ifPresent(frame -> points.add(PlanPlaces.point(frame, -RunwayMarks.displacedM(end), -half)));
                axis.ifPresent(frame -> points.add(PlanPlaces.point(frame, -RunwayMarks.displacedM(end), half)));
            }
        }
        return points;
    }
}
