package slopewright.ui.plan.internal.policies;

import java.util.Optional;

import slopewright.model.Identified;
import slopewright.ui.diagram.policies.MoveRequest;
import slopewright.ui.plan.internal.PlanContext;

/**
 * How elements of a kind are moved in the plan.
 *
 * @param <T> the type of the elements
 */
@FunctionalInterface
public interface Mover<T extends Identified> {

    /** Returns where a drag would leave an element, empty where it leads nowhere. */
    Optional<Drop<T>> drop(PlanContext context, T element, MoveRequest move);
}
