package slopewright.ui.profile.internal.section;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

import slopewright.drawing.section.BeamEdge;
import slopewright.drawing.section.Section;
import slopewright.geometry.FramePoint;
import slopewright.siting.UnitPlan;
import slopewright.ui.diagram.WorldView;

/**
 * What of a section lies under the pointer and can be dragged.
 *
 * @param kind what it is
 * @param edge the edge of a beam
 * @param unit the light unit, also that of the edge
 * @param point which point of the ground beside the runway
 */
record Grip(Kind kind, Optional<BeamEdge> edge, Optional<UnitPlan> unit, OptionalInt point) {

    private static final double EYE_PX = 9;
    private static final double UNIT_PX = 7;
    private static final double EDGE_PX = 4;
    private static final double CLEAR_OF_LENS_PX = 24;

    /** What can be dragged. */
    enum Kind {
        /** The window itself. */
        GROUND,
        /** The pilot's eye. */
        EYE,
        /** A point of the ground beside the runway. */
        POINT,
        /** A light unit. */
        UNIT,
        /** The edge of a beam. */
        EDGE
    }

    /** Finds what lies at a pixel. */
    static Grip at(SectionCanvas canvas, double x, double y) {
        WorldView view = canvas.view();
        if (canvas.eye().filter(eye -> distance(view, eye, x, y) <= EYE_PX).isPresent()) {
            return of(Kind.EYE);
        }
        Optional<Section> section = canvas.section();
        Optional<UnitPlan> unit = section.flatMap(drawn -> drawn.siting().units().stream()
                .filter(plan -> distance(view, plan.place(), x, y) <= UNIT_PX)
                .min(Comparator.comparingDouble(plan -> distance(view, plan.place(), x, y))));
        if (unit.isPresent()) {
            return new Grip(Kind.UNIT, Optional.empty(), unit, OptionalInt.empty());
        }
        OptionalInt point = section.map(drawn -> nearest(view, GroundPoints.of(drawn), x, y)).orElse(OptionalInt.empty());
        if (point.isPresent()) {
            return new Grip(Kind.POINT, Optional.empty(), Optional.empty(), point);
        }
        Optional<BeamEdge> edge = section.flatMap(drawn -> drawn.edges().stream().filter(ray -> distance(view, ray, x, y) <= EDGE_PX)
                .min(Comparator.comparingDouble(ray -> distance(view, ray, x, y))));
        return edge.map(ray -> new Grip(Kind.EDGE, edge, Optional.of(ray.unit()), OptionalInt.empty())).orElse(of(Kind.GROUND));
    }

    /** Returns a grip that has no part of an indicator under it. */
    static Grip of(Kind kind) {
        return new Grip(kind, Optional.empty(), Optional.empty(), OptionalInt.empty());
    }

    private static OptionalInt nearest(WorldView view, List<FramePoint> points, double x, double y) {
        return IntStream.range(0, points.size()).filter(i -> distance(view, points.get(i), x, y) <= UNIT_PX)
                .reduce((one, other) -> distance(view, points.get(one), x, y) <= distance(view, points.get(other), x, y) ? one : other);
    }

    private static double distance(WorldView view, FramePoint place, double x, double y) {
        return Math.hypot(view.toX(place.alongM()) - x, view.toY(place.heightM()) - y);
    }

    /** Returns how far a pixel lies from a ray; infinite close to the lens, where all rays meet, and behind it. */
    private static double distance(WorldView view, BeamEdge edge, double x, double y) {
        double lensX = view.toX(edge.unit().place().alongM());
        if (x > lensX - CLEAR_OF_LENS_PX) {
            return Double.POSITIVE_INFINITY;
        }
        double onRay = view.toY(edge.heightM(view.worldX(x)));
        double slope = (onRay - view.toY(edge.unit().place().heightM())) / (lensX - x);
        return Math.abs(onRay - y) / Math.hypot(1, slope);
    }
}
