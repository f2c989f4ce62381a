package slopewright.ui.plan.internal.policies;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.edit.MovePlaces;
import slopewright.model.Identified;
import slopewright.model.Place;
import slopewright.siting.site.PlanPlane;
import slopewright.siting.site.PlanPoint;
import slopewright.ui.diagram.figures.ReadoutFigure.Line;
import slopewright.ui.diagram.policies.MoveRequest;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.Readings;
import slopewright.ui.plan.internal.figures.Marks;

/**
 * Moves an element by all its places: an obstacle, a ground level, the edge of a taxiway, a helipad.
 *
 * @param <T> the type of the element
 */
public final class PlacesMover<T extends Identified> implements Mover<T> {

    private final String label;
    private final Function<T, List<Place>> places;
    private final BiFunction<PlanContext, T, List<Line>> said;

    private PlacesMover(String label, Function<T, List<Place>> places, BiFunction<PlanContext, T, List<Line>> said) {
        this.label = label;
        this.places = places;
        this.said = said;
    }

    /** Makes the mover of elements that are their places. */
    public static <T extends Identified> PlacesMover<T> of(Function<T, List<Place>> places) {
        return new PlacesMover<>("Move", places, (context, moved) -> List.of());
    }

    /**
     * Makes a mover.
     *
     * @param label  what an edit by it is called
     * @param places the places of an element
     * @param said   what is said while a copy of the element stands at another place
     */
    static <T extends Identified> PlacesMover<T> of(String label, Function<T, List<Place>> places,
            BiFunction<PlanContext, T, List<Line>> said) {
        return new PlacesMover<>(label, places, said);
    }

    @Override
    public Optional<Drop<T>> drop(PlanContext context, T element, MoveRequest move) {
        List<ScenePoint> points = places.apply(element).stream().flatMap(place -> context.places().point(place).stream())
                .map(place -> new ScenePoint(place.x() + move.byX(), place.y() + move.byY())).toList();
        if (points.isEmpty() || move.byX() == 0 && move.byY() == 0) {
            return Optional.empty();
        }
        T copy = EcoreUtil.copy(element);
        List<Place> moved = places.apply(copy);
        move(context, places.apply(element), moved, move);
        return Optional.of(new Drop<>(List.of(move.byX(), move.byY()), by(move), said.apply(context, copy), marks -> ghost(marks, points),
                points.get(0), found -> MovePlaces.of(label, places.apply(found), moved)));
    }

    /** Moves copies of places, as many of them as have coordinates. */
    static void move(PlanContext context, List<Place> places, List<Place> copies, MoveRequest move) {
        PlanPlane plane = context.plane().orElseThrow();
        for (int i = 0; i < copies.size(); i++) {
            Optional<ScenePoint> at = context.places().point(places.get(i));
            if (at.isPresent()) {
                plane.toPlace(new PlanPoint(at.get().x() + move.byX(), at.get().y() + move.byY()), copies.get(i));
            }
        }
    }

    static String by(MoveRequest move) {
        return Messages.get("move.by", Readings.length(Math.hypot(move.byX(), move.byY())));
    }

    private static void ghost(Marks marks, List<ScenePoint> points) {
        marks.line(Style.line(Ink.WHEELS, 0.5), new ArrayList<>(points));
        points.forEach(place -> marks.disc(place, 1.1, Style.line(Ink.WHEELS, 0.4)));
    }
}
