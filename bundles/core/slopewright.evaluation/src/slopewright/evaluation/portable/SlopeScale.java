package slopewright.evaluation.portable;

import java.util.Optional;

import slopewright.geometry.Angles;
import slopewright.model.EquipmentType;

/**
 * The scale at which the slope of a portable unit is set: marks from zero in equal steps.
 *
 * @param stepDeg from one mark to the next, decimal degrees
 */
public record SlopeScale(double stepDeg) {

    /**
     * The mark to which a unit is set.
     *
     * @param settingDeg the setting that is wanted, decimal degrees
     * @param markDeg    the nearest mark, decimal degrees
     */
    public record Mark(double settingDeg, double markDeg) {

        /** Returns by how much the mark is steeper than the setting, minutes of arc, negative where it is flatter. */
        public double offMin() {
            return Angles.degToMinutes(markDeg - settingDeg);
        }
    }

    /** Refuses a scale without steps. */
    public SlopeScale {
        if (!(stepDeg > 0)) {
            throw new IllegalArgumentException("the scale has no steps");
        }
    }

    /**
     * Reads the scale of an equipment type.
     *
     * @param type the type; null where there is none
     * @return the scale; empty where its graduation is not entered
     */
    public static Optional<SlopeScale> of(EquipmentType type) {
        return type == null || type.getSlopeScaleStepDeg() == null || !(type.getSlopeScaleStepDeg() > 0) ? Optional.empty()
                : Optional.of(new SlopeScale(type.getSlopeScaleStepDeg()));
    }

    /**
     * Finds the mark nearest to a setting.
     *
     * @param settingDeg the setting, decimal degrees
     * @return the mark
     */
    public Mark mark(double settingDeg) {
        return new Mark(settingDeg, Math.round(settingDeg / stepDeg) * stepDeg);
    }
}
