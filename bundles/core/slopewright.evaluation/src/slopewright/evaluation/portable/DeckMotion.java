package slopewright.evaluation.portable;

import java.util.Optional;

import slopewright.geometry.Angles;
import slopewright.model.ApproachHost;
import slopewright.model.EquipmentType;
import slopewright.model.Helipad;
import slopewright.model.util.Projects;

/**
 * What the motion of a floating deck does to a beam. Pitch and roll lift and lower it, both at once in the worst case; the swing of the
 * heading turns it.
 *
 * @param tiltMin  greatest tilt of the beam to either side, minutes of arc
 * @param swingDeg greatest turn of the beam to either side, decimal degrees
 * @param held     whether the unit is stabilised, so that only what is left of the motion counts
 */
public record DeckMotion(double tiltMin, double swingDeg, boolean held) {

    /** Returns whether a helipad floats, so that its motion has to be known. */
    public static boolean isFloating(ApproachHost host) {
        return Projects.helipad(host).filter(pad -> Boolean.TRUE.equals(pad.getFloating())).isPresent();
    }

    /**
     * Reads the motion of the deck on which a unit stands.
     *
     * @param host the approach
     * @param type the equipment; null where there is none
     * @return the motion; empty where the deck does not float, or its motion is not entered
     */
    public static Optional<DeckMotion> of(ApproachHost host, EquipmentType type) {
        Helipad pad = Projects.helipad(host).orElse(null);
        if (pad == null || !isFloating(host) || pad.getDeckPitchDeg() == null || pad.getDeckRollDeg() == null
                || pad.getDeckHeadingDeg() == null) {
            return Optional.empty();
        }
        if (type != null && type.getStabilisedToDeg() != null) {
            return Optional.of(new DeckMotion(Angles.degToMinutes(type.getStabilisedToDeg()), pad.getDeckHeadingDeg(), true));
        }
        return Optional.of(new DeckMotion(Angles.degToMinutes(Math.hypot(pad.getDeckPitchDeg(), pad.getDeckRollDeg())),
                pad.getDeckHeadingDeg(), false));
    }
}
