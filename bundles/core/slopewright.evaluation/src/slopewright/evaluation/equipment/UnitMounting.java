package slopewright.evaluation.equipment;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.UnitGround;
import slopewright.model.EquipmentType;
import slopewright.model.LightUnit;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;
import slopewright.siting.site.SiteFrame;

/**
 * How one unit stands: levels in the vertical datum of the aerodrome, metres.
 *
 * @param plan         the unit in the layout
 * @param lensM        level of its lens
 * @param groundM      level of the ground under it; empty where it was not surveyed
 * @param standsM      its height above the ground, as entered for the unit, else for its type; empty where not entered
 * @param frangible    whether it is on a frangible mounting; empty where not entered
 * @param massKg       its mass; empty where not entered
 * @param turnedDeg    how far its beam is turned from the approach, to the right positive; empty where not entered
 */
public record UnitMounting(UnitPlan plan, double lensM, OptionalDouble groundM, OptionalDouble standsM, Optional<Boolean> frangible,
        OptionalDouble massKg, OptionalDouble turnedDeg) {

    /** Refuses missing parts. */
    public UnitMounting {
        Objects.requireNonNull(plan);
        Objects.requireNonNull(groundM);
        Objects.requireNonNull(standsM);
        Objects.requireNonNull(frangible);
        Objects.requireNonNull(massKg);
        Objects.requireNonNull(turnedDeg);
    }

    /** Returns how far the lens is above the surveyed ground, metres; empty where that is not known. */
    public OptionalDouble lensAboveGroundM() {
        return groundM.isPresent() ? OptionalDouble.of(lensM - groundM.getAsDouble()) : OptionalDouble.empty();
    }

    /**
     * Returns how the units of a layout stand.
     *
     * @param aid    the evaluation of the aid
     * @param siting its layout
     * @param frame  the frame of its runway end or helipad
     * @return the units in the order of the layout
     */
    public static List<UnitMounting> of(AidEvaluation aid, Siting siting, SiteFrame frame) {
        UnitGround ground = UnitGround.of(aid.aid());
        EquipmentType type = aid.aid().getEquipment();
        return siting.units().stream().map(plan -> {
            Optional<LightUnit> unit = aid.aid().getUnits().stream().filter(each -> plan.id().equals(each.getLabel())).findFirst();
            OptionalDouble level = ground.heightM(plan.place().alongM());
            Double typeHeight = type == null ? null : type.getHeightAboveGroundM();
            return new UnitMounting(plan, frame.originElevationM() + plan.place().heightM(), level.isPresent()
                    ? OptionalDouble.of(frame.originElevationM() + level.getAsDouble()) : level, known(unit.map(
                            LightUnit::getHeightAboveGroundM).orElse(typeHeight)), unit.map(LightUnit::getFrangible), known(type == null
                                    ? null : type.getMassKg()), known(unit.map(LightUnit::getAzimuthOffsetDeg).orElse(null)));
        }).toList();
    }

    private static OptionalDouble known(Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
