package slopewright.siting.internal;

import java.util.ArrayList;
import java.util.List;

import slopewright.siting.Side;
import slopewright.siting.Signals;
import slopewright.siting.UnitPlan;

/** Puts units that were laid out on the right of the centre line on the side that was asked for. */
final class Sides {

    private Sides() {
    }

    /** Returns the units on the side, or on both, each side with its own names where there are two. */
    static List<UnitPlan> place(List<UnitPlan> onTheRight, Side side) {
        List<UnitPlan> placed = new ArrayList<>();
        for (UnitPlan unit : onTheRight) {
            if (side != Side.RIGHT) {
                placed.add(side == Side.BOTH ? unit.mirrored().named(unit.id() + "-left") : unit.mirrored());
            }
            if (side != Side.LEFT) {
                placed.add(side == Side.BOTH ? unit.named(unit.id() + "-right") : unit);
            }
        }
        return Signals.inOrder(placed);
    }
}
