package slopewright.edit;

import java.util.List;

import slopewright.model.AidSide;
import slopewright.model.ApproachAid;
import slopewright.model.LightUnit;

/** Moves an approach aid as a whole. One that stands on both sides stays symmetrical: across, its sides move opposite ways. */
public final class MoveAid {

    private MoveAid() {
    }

    /**
     * Moves all units of an aid, as {@link MoveUnits} does. Of an aid on both sides the units on the side of the first one move as said
     * and those on the other side as their mirror.
     *
     * @param aid    the aid
     * @param alongM how far in the landing direction, metres
     * @param rightM how far to the right of the landing direction, metres
     */
    public static RecordedEdit by(ApproachAid aid, double alongM, double rightM) {
        boolean leadIsLeft = aid.getUnits().stream().findFirst().filter(MoveAid::isLeft).isPresent();
        return by(aid, alongM, rightM, leadIsLeft);
    }

    /**
     * Moves all units of an aid that was taken by one side.
     *
     * @param aid       the aid
     * @param alongM    how far in the landing direction, metres
     * @param rightM    how far the side that was taken goes to the right of the landing direction, metres
     * @param takenLeft whether it was taken by the units on the left
     */
    public static RecordedEdit by(ApproachAid aid, double alongM, double rightM, boolean takenLeft) {
        List<LightUnit> units = aid.getUnits();
        return MoveUnits.named("Move aid", units, alongM, rightM,
                unit -> aid.getSide() == AidSide.BOTH && unit.getRightM() != null && unit.getRightM() != 0 && isLeft(unit) != takenLeft);
    }

    private static boolean isLeft(LightUnit unit) {
        return unit.getRightM() != null && unit.getRightM() < 0;
    }
}
