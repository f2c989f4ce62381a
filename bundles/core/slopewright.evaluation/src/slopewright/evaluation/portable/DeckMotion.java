package slopewright.evaluation.portable;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import slopewright.geometry.Angles;
import slopewright.model.ApproachHost;
import slopewright.model.EquipmentType;
import slopewright.model.Helipad;
import slopewright.model.util.Projects;
import slopewright.siting.Light;
import slopewright.siting.UnitPlan;

/**
 * What the motion of a floating deck does to a beam. Pitch and roll lift and lower it, both at once in the worst case; the swing of the
 * heading turns it.
 *
 * @param tiltMin  greatest tilt of the beam to either side, minutes of arc
 * @param swingDeg greatest turn of the beam to either side, decimal degrees
 * @param held     whether the unit is stabilised, so that only what is left of the motion counts
 */
public record DeckMotion(double tiltMin, double swingDeg, boolean held) {

    /**
     * What is left of one sector of a unit on a deck that moves.
     *
     * @param light    what it shows
     * @param widthMin how wide it is, minutes of arc
     * @param leftMin  how much of it shows the same however the deck moves, minutes of arc, zero or more
     */
    public record SectorLeft(Light light, double widthMin, double leftMin) {
    }

    /** Returns what is left of each sector that ends above and below, the lowest first; each edge moves by the whole tilt to both sides. */
    public List<SectorLeft> left(UnitPlan unit) {
        List<SectorLeft> all = new ArrayList<>();
        for (int i = 1; i < unit.edges().size(); i++) {
            double width = Angles.degToMinutes(unit.edges().get(i).angleDeg() - unit.edges().get(i - 1).angleDeg());
            all.add(new SectorLeft(unit.edges().get(i).below(), width, Math.max(0, width - 2 * tiltMin)));
        }
        return all;
    }

    /** Returns whether motion of a helipad is entered: only what moves has a pitch, a roll or a swing. */
    public static boolean isEntered(Helipad pad) {
        return Stream.of(Optional.ofNullable(pad.getDeckPitchDeg()), Optional.ofNullable(pad.getDeckRollDeg()),
                Optional.ofNullable(pad.getDeckHeadingDeg())).flatMap(Optional::stream).anyMatch(motionDeg -> motionDeg != 0);
    }

    /** Returns whether a helipad floats, or motion of it is entered, whatever is said of it, so that its motion has to be known. */
    public static boolean isFloating(ApproachHost host) {
        return Projects.helipad(host).filter(pad -> Boolean.TRUE.equals(pad.getFloating()) || isEntered(pad)).isPresent();
    }

    /**
     * Returns whether nobody says for certain that a helipad is firm, or that it floats and by how much it pitches, rolls and swings. What
     * floats moves: where every motion is nothing, none is known.
     */
    public static boolean isUnknown(ApproachHost host) {
        return Projects.helipad(host).filter(pad -> pad.getFloating() == null || isFloating(host) && !(pad.getFloating() && isEntered(pad)
                && pad.getDeckPitchDeg() != null && pad.getDeckRollDeg() != null && pad.getDeckHeadingDeg() != null)).isPresent();
    }

    /**
     * Reads the motion of the deck on which a unit stands.
     *
     * @param host the approach
     * @param type the equipment; null where there is none
     * @return the motion; empty where the deck does not float, or its motion is not entered in full
     */
    public static Optional<DeckMotion> of(ApproachHost host, EquipmentType type) {
        Helipad pad = Projects.helipad(host).orElse(null);
        if (pad == null || !isFloating(host) || !isEntered(pad) || pad.getDeckPitchDeg() == null || pad.getDeckRollDeg() == null
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
