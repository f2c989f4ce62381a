package slopewright.siting.range;

import java.util.Objects;
import java.util.OptionalDouble;

import slopewright.model.ApproachAid;
import slopewright.model.EquipmentType;

/**
 * What is known of light and air beside the rule set.
 *
 * @param intensityCd intensity of one unit, candela; empty where the rule set's is taken
 * @param visibilityM meteorological optical range, metres; empty where the rule set's is taken
 */
public record RangeConditions(OptionalDouble intensityCd, OptionalDouble visibilityM) {

    /** Refuses missing parts. */
    public RangeConditions {
        Objects.requireNonNull(intensityCd);
        Objects.requireNonNull(visibilityM);
    }

    /** Returns conditions that leave both to the rule set. */
    public static RangeConditions unknown() {
        return new RangeConditions(OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** Returns conditions with the intensity of a type of equipment, where it has one. */
    public static RangeConditions of(EquipmentType type) {
        Double intensity = type.getIntensityCd();
        return new RangeConditions(intensity == null ? OptionalDouble.empty() : OptionalDouble.of(intensity), OptionalDouble.empty());
    }

    /** Returns conditions with the intensity of an aid's equipment, where it has one. */
    public static RangeConditions of(ApproachAid aid) {
        return aid.getEquipment() == null ? unknown() : of(aid.getEquipment());
    }

    /** Returns the same with another visibility, metres. */
    public RangeConditions withVisibilityM(double newVisibilityM) {
        return new RangeConditions(intensityCd, OptionalDouble.of(newVisibilityM));
    }
}
