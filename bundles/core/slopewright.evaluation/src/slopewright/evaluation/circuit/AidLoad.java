package slopewright.evaluation.circuit;

import slopewright.model.ApproachAid;
import slopewright.model.EquipmentType;

/**
 * The load of one aid. Lamps are taken as resistive, so that watts and volt-amperes are the same.
 *
 * @param aid          the aid
 * @param units        number of its units
 * @param lampsPerUnit lamps in a unit
 * @param lampPowerW   power of one lamp, watts
 */
public record AidLoad(ApproachAid aid, int units, Integer lampsPerUnit, Double lampPowerW) {

    /** Returns the power of all lamps, watts; null where a number is not known. */
    public Double powerW() {
        return units == 0 || lampsPerUnit == null || lampPowerW == null ? null : Double.valueOf(units * lampsPerUnit * lampPowerW);
    }

    /** Returns the load of an aid as its equipment type says. */
    public static AidLoad of(ApproachAid aid) {
        EquipmentType type = aid.getEquipment();
        return new AidLoad(aid, aid.getUnits().size(), type == null ? null : type.getLampsPerUnit(),
                type == null ? null : type.getLampPowerW());
    }
}
