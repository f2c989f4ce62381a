package slopewright.evaluation.portable;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

import slopewright.geometry.Angles;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.model.PlateSense;
import slopewright.model.PlateZero;

/**
 * The azimuth plate under a portable unit. Its zero is laid out with the compass; the pointer looks along the beam, outward.
 *
 * @param zero    where the zero of the plate points
 * @param sense   which way its numbers run, seen from above
 * @param stepDeg from one mark to the next, decimal degrees
 */
public record AzimuthPlate(PlateZero zero, PlateSense sense, double stepDeg) {
    private static final double FULL_DEG = 360;

    /**
     * What the pointer shows.
     *
     * @param zeroMagneticDeg where the zero is laid to by compass, decimal degrees
     * @param exactDeg        the reading between the marks, decimal degrees from 0 to below 360
     * @param markDeg         the nearest mark, decimal degrees from 0 to below 360
     * @param offDeg          by how much the beam is off when the pointer is at that mark, decimal degrees, zero or more
     */
    public record Reading(double zeroMagneticDeg, double exactDeg, double markDeg, double offDeg) {
    }

    /** Refuses a plate that is not described. */
    public AzimuthPlate {
        Objects.requireNonNull(zero);
        Objects.requireNonNull(sense);
        if (zero == PlateZero.NOT_STATED || sense == PlateSense.NOT_STATED || !(stepDeg > 0)) {
            throw new IllegalArgumentException("the plate is not described");
        }
    }

    /**
     * Reads the plate of an equipment type.
     *
     * @param type the type; null where there is none
     * @return the plate; empty where zero, sense or graduation is not entered
     */
    public static Optional<AzimuthPlate> of(EquipmentType type) {
        if (type == null || type.getPlateZero() == PlateZero.NOT_STATED || type.getPlateSense() == PlateSense.NOT_STATED
                || type.getPlateStepDeg() == null || !(type.getPlateStepDeg() > 0)) {
            return Optional.empty();
        }
        return Optional.of(new AzimuthPlate(type.getPlateZero(), type.getPlateSense(), type.getPlateStepDeg()));
    }

    /**
     * Reads the plate for a beam.
     *
     * @param beamMagneticDeg    axis of the beam outward, by compass, decimal degrees
     * @param landingMagneticDeg landing direction by compass, decimal degrees
     * @return the reading
     */
    public Reading reading(double beamMagneticDeg, double landingMagneticDeg) {
        double zeroAt = switch (zero) {
            case SOUTH -> FULL_DEG / 2;
            case LANDING_DIRECTION -> Angles.normaliseBearingDeg(landingMagneticDeg);
            default -> 0;
        };
        double turned = beamMagneticDeg - zeroAt;
        double exact = Angles.normaliseBearingDeg(sense == PlateSense.CLOCKWISE ? turned : -turned);
        double mark = Math.round(exact / stepDeg) * stepDeg;
        return new Reading(zeroAt, exact, mark >= FULL_DEG ? 0 : mark, Math.abs(exact - mark));
    }

    /** Returns how the plate counts, for people. */
    public Message message() {
        return Message.of("portable.plate", Words.term("plate-zero." + term(zero)), Words.term("plate-sense." + term(sense)),
                Words.degrees(stepDeg));
    }

    private static String term(Enum<?> literal) {
        return literal.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
