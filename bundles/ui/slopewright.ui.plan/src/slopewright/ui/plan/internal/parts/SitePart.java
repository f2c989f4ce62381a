package slopewright.ui.plan.internal.parts;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

import org.eclipse.gef.DragTracker;
import org.eclipse.gef.EditPolicy;
import org.eclipse.gef.Request;

import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.ScenePoint;
import slopewright.edit.RemoveElement;
import slopewright.model.Identified;
import slopewright.model.Place;
import slopewright.ui.diagram.policies.RemovePolicy;
import slopewright.ui.diagram.tools.MoveTracker;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.PlanLayer;
import slopewright.ui.plan.internal.policies.MovePlacesPolicy;

/**
 * The part of an element of the site: runways and their ends, helipads, edges, levels, antennas. Each can be removed, some can be
 * moved by their places.
 *
 * @param <T> the type of the element
 */
final class SitePart<T extends Identified> extends PlanPart<T> {

    private final Function<T, List<Mark>> drawing;
    private Supplier<List<? extends Identified>> children = List::of;
    private Supplier<Optional<ScenePoint>> pin = Optional::empty;
    private Optional<Function<T, List<Place>>> moving = Optional.empty();

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

    /** Lets it be moved by its places. */
    SitePart<T> movedBy(Function<T, List<Place>> places) {
        moving = Optional.of(places);
        return this;
    }

    @Override
    protected void createEditPolicies() {
        super.createEditPolicies();
        installEditPolicy(EditPolicy.COMPONENT_ROLE, new RemovePolicy(() -> RemoveElement.of(element())));
        moving.ifPresent(places -> installEditPolicy(EditPolicy.PRIMARY_DRAG_ROLE, new MovePlacesPolicy<>(context(), element(), places)));
    }

    @Override
    public DragTracker getDragTracker(Request request) {
        return moving.isPresent() ? new MoveTracker(this, diagram().view()) : super.getDragTracker(request);
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
