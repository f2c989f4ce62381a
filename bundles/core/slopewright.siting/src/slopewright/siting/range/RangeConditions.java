package slopewright.siting.range;

import java.util.Objects;
import java.util.OptionalDouble;

import slopewright.model.ApproachAid;
import slopewright.model.EquipmentType;

/**
 * What is known of light and air beside the rule set.
 *
 * @param intensityCd      intensity of one unit on the axis of its beam, candela; of its red light where it has a white one with a number
 *                         of its own; empty where the rule set's is taken
 * @param whiteIntensityCd the same of its white light, candela; empty where the other number holds for it as well
 * @param beamWidthDeg     width of the beam in azimuth, decimal degrees; empty where it is not known
 * @param nightPercent     share of the intensity at the setting for the night, per cent; empty where all of it is taken
 * @param visibilityM      meteorological optical range, metres; empty where the rule set's is taken
 */
public record RangeConditions(OptionalDouble intensityCd, OptionalDouble whiteIntensityCd, OptionalDouble beamWidthDeg,
        OptionalDouble nightPercent, OptionalDouble visibilityM) {

    /** Refuses missing parts. */
    public RangeConditions {
        Objects.requireNonNull(intensityCd);
        Objects.requireNonNull(whiteIntensityCd);
        Objects.requireNonNull(beamWidthDeg);
        Objects.requireNonNull(nightPercent);
        Objects.requireNonNull(visibilityM);
    }

    /** Returns conditions that leave all to the rule set. */
    public static RangeConditions unknown() {
        return new RangeConditions(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    /** Returns conditions with what is known of a type of equipment. */
    public static RangeConditions of(EquipmentType type) {
        return new RangeConditions(known(type.getIntensityCd()), known(type.getWhiteIntensityCd()), known(type.getBeamWidthDeg()),
                known(type.getNightStepPercent()), OptionalDouble.empty());
    }

    private static OptionalDouble known(Double number) {
        return number == null ? OptionalDouble.empty() : OptionalDouble.of(number);
    }

    /** Returns conditions with what is known of an aid's equipment. */
    public static RangeConditions of(ApproachAid aid) {
        return aid.getEquipment() == null ? unknown() : of(aid.getEquipment());
    }

    /** Returns the same with another visibility, metres. */
    public RangeConditions withVisibilityM(double newVisibilityM) {
        return new RangeConditions(intensityCd, whiteIntensityCd, beamWidthDeg, nightPercent, OptionalDouble.of(newVisibilityM));
    }

    /** Returns the same with another intensity, candela. */
    public RangeConditions withIntensityCd(double newIntensityCd) {
        return new RangeConditions(OptionalDouble.of(newIntensityCd), whiteIntensityCd, beamWidthDeg, nightPercent, visibilityM);
    }
}
