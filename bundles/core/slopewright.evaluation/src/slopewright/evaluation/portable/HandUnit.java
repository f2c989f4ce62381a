package slopewright.evaluation.portable;

import java.util.List;
import java.util.Optional;

import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.model.EquipmentType;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;
import slopewright.siting.magnetic.SiteVariation;

/**
 * What the hand does to one unit: where it is carried, what its plate reads and to which mark its slope is set.
 *
 * @param unit             the unit as it is laid out
 * @param walkM            how far it is carried from the hover point, or from the threshold, metres on the ground
 * @param walkTrueDeg      in which direction, decimal degrees from true north
 * @param walkMagneticDeg  in which direction by compass, decimal degrees
 * @param beamTrueDeg      axis of its beam outward, decimal degrees from true north
 * @param beamMagneticDeg  axis of its beam outward by compass, decimal degrees
 * @param plate            what its azimuth plate reads; empty where the plate is not described
 * @param slope            the mark of its slope scale; empty where the scale is not described
 */
public record HandUnit(UnitPlan unit, double walkM, double walkTrueDeg, double walkMagneticDeg, double beamTrueDeg, double beamMagneticDeg,
        Optional<AzimuthPlate.Reading> plate, Optional<SlopeScale.Mark> slope) {

    /**
     * Works out what the hand does to every unit of a layout.
     *
     * @param siting         the layout
     * @param landingTrueDeg landing direction, decimal degrees from true north
     * @param variation      the magnetic variation on the day
     * @param type           the equipment; null where there is none
     * @return an entry for each unit, in the order of the layout
     */
    public static List<HandUnit> of(Siting siting, double landingTrueDeg, SiteVariation variation, EquipmentType type) {
        Optional<AzimuthPlate> plate = AzimuthPlate.of(type);
        Optional<SlopeScale> scale = SlopeScale.of(type);
        double landing = variation.magneticDeg(landingTrueDeg);
        return siting.units().stream().map(unit -> {
            FramePoint place = unit.place();
            double walkTrue = Angles.normaliseBearingDeg(landingTrueDeg + Math.toDegrees(Math.atan2(place.rightM(), place.alongM())));
            double beamTrue = Angles.normaliseBearingDeg(landingTrueDeg + 180 + unit.azimuthDeg());
            double beam = variation.magneticDeg(beamTrue);
            return new HandUnit(unit, Math.hypot(place.alongM(), place.rightM()), walkTrue, variation.magneticDeg(walkTrue), beamTrue, beam,
                    plate.map(found -> found.reading(beam, landing)), scale.map(found -> found.mark(unit.settingDeg())));
        }).toList();
    }
}
