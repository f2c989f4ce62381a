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
import slopewright.ui.diagram.policies.RemovePolicy;
import slopewright.ui.diagram.tools.MoveTracker;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.PlanLayer;
import slopewright.ui.plan.internal.policies.MovePolicy;
import slopewright.ui.plan.internal.policies.Mover;

/**
 * The part of an element of the site: runways and their ends, helipads and their directions, edges, levels, antennas. Each can be removed,
 * and moved as its mover says.
 *
 * @param <T> the type of the element
 */
final class SitePart<T extends Identified> extends PlanPart<T> {

    private static final double RING_MM = 1.2;

    private final Function<T, List<Mark>> drawing;
    private Supplier<List<? extends Identified>> children = List::of;
    private Supplier<Optional<ScenePoint>> pin = Optional::empty;
    private Optional<Mover<T>> mover = Optional.empty();
    private boolean isHeld;

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

    SitePart<T> movedBy(Mover<T> by) {
        mover = Optional.of(by);
        return this;
    }

    /** Lets it be moved by the mouse only once it is selected, for what is so large that it is dragged by mistake. */
    SitePart<T> onceSelected() {
        isHeld = true;
        return this;
    }

    @Override
    protected void createEditPolicies() {
        super.createEditPolicies();
        installEditPolicy(EditPolicy.COMPONENT_ROLE, new RemovePolicy(() -> RemoveElement.of(element())));
        mover.ifPresent(by -> installEditPolicy(EditPolicy.PRIMARY_DRAG_ROLE, new MovePolicy<>(context(), element(), by)));
    }

    @Override
    public DragTracker getDragTracker(Request request) {
        boolean moves = mover.isPresent() && (!isHeld || getSelected() != SELECTED_NONE);
        return moves ? new MoveTracker(this, diagram().view()) : super.getDragTracker(request);
    }

    /** What is shown by its name alone, such as a runway end, is ringed where it is pinned. */
    @Override
    List<Mark> outline() {
        List<Mark> lines = super.outline();
        return lines.isEmpty() ? pin.get().stream().map(place -> outlined(new Mark.Disc(place, RING_MM, OUTLINE, element().getId())))
                .toList() : lines;
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
