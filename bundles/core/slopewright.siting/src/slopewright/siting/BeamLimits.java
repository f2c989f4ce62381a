package slopewright.siting;

import java.util.Optional;

import slopewright.geometry.FramePoint;
import slopewright.model.ApproachAid;

/**
 * How far the beam of a unit reaches to either side of its axis.
 *
 * @param leftDeg  to the left as the pilot sees it, decimal degrees, negative or zero
 * @param rightDeg to the right as the pilot sees it, decimal degrees, zero or more
 */
public record BeamLimits(double leftDeg, double rightDeg) {

    /**
     * Returns the limits of an aid: those that are entered for it, and no farther than the beam of its equipment reaches.
     *
     * @param aid the aid
     * @return the limits; empty where neither is entered for both sides
     */
    public static Optional<BeamLimits> of(ApproachAid aid) {
        Double half = aid.getEquipment() == null || aid.getEquipment().getBeamWidthDeg() == null ? null
                : Double.valueOf(aid.getEquipment().getBeamWidthDeg() / 2);
        Double left = nearer(aid.getBeamLeftLimitDeg(), half);
        Double right = nearer(aid.getBeamRightLimitDeg(), half);
        return left == null || right == null ? Optional.empty() : Optional.of(new BeamLimits(-left, right));
    }

    private static Double nearer(Double entered, Double half) {
        Double width = entered == null ? null : Double.valueOf(Math.abs(entered));
        return width == null ? half : half == null ? width : Double.valueOf(Math.min(width, half));
    }

    /** Returns whether an eye is in the beam of a unit; abeam of it and behind it, it is not. */
    public boolean contains(UnitPlan unit, FramePoint eye) {
        double off = unit.offAxisDeg(eye);
        return unit.axisDistanceM(eye) > 0 && off >= leftDeg && off <= rightDeg;
    }
}
