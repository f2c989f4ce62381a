package slopewright.edit;

import slopewright.model.ApproachAid;

/** Takes an approach aid out of its runway end or helipad, and out of its circuits. */
public final class RemoveAid {

    private RemoveAid() {
    }

    /**
     * Removes an aid.
     *
     * @param aid an aid of a project
     * @throws EditException where it is part of none
     */
    public static RecordedEdit of(ApproachAid aid) {
        return RemoveElement.named("Remove aid", aid);
    }
}
