package slopewright.evaluation.portable;

import slopewright.geometry.Angles;
import slopewright.model.ApproachAid;
import slopewright.model.LightColour;
import slopewright.model.Transition;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;

/** Holds the sectors of a layout against those that were entered for the unit in hand. */
final class EnteredSectors {
    private static final double SAME_MINUTES = 1;

    private EnteredSectors() {
    }

    /** Returns whether a unit has an edge between two colours elsewhere than its equipment has. */
    static boolean differ(ApproachAid aid, Siting siting) {
        return aid.getEquipment() != null && aid.getEquipment().getSectors().stream()
                .filter(sector -> sector.getOffsetDeg() != null && sector.getBelowColour() != LightColour.NONE)
                .anyMatch(sector -> siting.units().stream().anyMatch(unit -> !shows(unit, sector)));
    }

    private static boolean shows(UnitPlan unit, Transition sector) {
        return unit.edges().stream().anyMatch(edge -> edge.below().colour().name().equals(sector.getBelowColour().name())
                && edge.above().colour().name().equals(sector.getAboveColour().name())
                && Math.abs(edge.angleDeg() - unit.settingDeg() - sector.getOffsetDeg()) <= Angles.minutesToDeg(SAME_MINUTES));
    }
}
