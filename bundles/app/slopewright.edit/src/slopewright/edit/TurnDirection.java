package slopewright.edit;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;

import slopewright.evaluation.landing.TakenDirection;
import slopewright.geometry.Angles;
import slopewright.messages.Message;
import slopewright.model.ApproachDirection;

/** Turns an approach direction of a helipad about its hover point; the aids of the direction turn along. */
public final class TurnDirection extends RecordedEdit {

    private final ApproachDirection direction;
    private final double trueDeg;

    private TurnDirection(ApproachDirection direction, double trueDeg) {
        super("Turn approach direction");
        this.direction = direction;
        this.trueDeg = trueDeg;
    }

    /**
     * Turns a direction.
     *
     * @param direction the direction; a designator that holds its bearing in three digits follows
     * @param trueDeg   landing direction, decimal degrees from true north
     */
    public static TurnDirection to(ApproachDirection direction, double trueDeg) {
        return new TurnDirection(direction, trueDeg);
    }

    @Override
    protected Collection<? extends EObject> scope() {
        return List.of(direction);
    }

    @Override
    protected void apply() {
        if (!Double.isFinite(trueDeg)) {
            throw new EditException(Message.of("edit.no-bearing"));
        }
        TakenDirection.turn(direction, Angles.normaliseBearingDeg(trueDeg));
    }
}
