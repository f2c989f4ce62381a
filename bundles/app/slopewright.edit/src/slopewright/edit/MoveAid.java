package slopewright.edit;

import slopewright.model.ApproachAid;

/** Moves an approach aid as a whole. */
public final class MoveAid {

    private MoveAid() {
    }

    /**
     * Moves all units of an aid, as {@link MoveUnits} does.
     *
     * @param aid    the aid
     * @param alongM how far in the landing direction, metres
     * @param rightM how far to the right of the landing direction, metres
     */
    public static RecordedEdit by(ApproachAid aid, double alongM, double rightM) {
        return MoveUnits.named("Move aid", aid.getUnits(), alongM, rightM);
    }
}
