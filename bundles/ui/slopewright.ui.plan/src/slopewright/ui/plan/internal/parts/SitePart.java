package slopewright.ui.plan.internal.parts;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.ScenePoint;
import slopewright.model.Identified;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.PlanLayer;

/**
 * The part of an element that is only looked at: runways and their ends, helipads, edges, levels, antennas.
 *
 * @param <T> the type of the element
 */
final class SitePart<T extends Identified> extends PlanPart<T> {

    private final Function<T, List<Mark>> drawing;
    private Supplier<List<? extends Identified>> children = List::of;
    private Supplier<Optional<ScenePoint>> pin = Optional::empty;

    SitePart(T element, PlanContext context, PlanLayer layer, Function<T, List<Mark>> drawing) {
        super(element, context, layer);
        this.drawing = drawing;
    }

    SitePart<T> with(Supplier<List<? extends Identified>> elements) {
        children = elements;
        return this;
    }

    SitePart<T> pinnedAt(Supplier<Optional<ScenePoint>> place) {
        pin = place;
        return this;
    }

    @Override
    protected List<Mark> marks() {
        return drawing.apply(element());
    }

    @Override
    protected List<? extends Identified> childElements() {
        return children.get();
    }

    @Override
    public Optional<ScenePoint> anchor() {
        return pin.get();
    }
}
