package slopewright.ui.profile.internal.section;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import slopewright.edit.Compound;
import slopewright.edit.MoveAid;
import slopewright.edit.MoveUnits;
import slopewright.edit.RecordedEdit;
import slopewright.edit.SetUnitSetting;
import slopewright.model.ApproachAid;
import slopewright.model.LightUnit;
import slopewright.ui.profile.internal.Messages;

/** The edits that are made in a section, each one step of undo. */
public final class SectionEdits {

    private static final double STEPS_PER_DEG = 1e6;

    private SectionEdits() {
    }

    /**
     * Turns units up by an angle, decimal degrees, keeping their differences.
     *
     * @param byDeg the angle
     * @param only  label of the only unit to turn; empty for all units of the aid
     */
    public static Function<ApproachAid, RecordedEdit> turn(double byDeg, Optional<String> only) {
        return aid -> {
            List<RecordedEdit> parts = units(aid, only).stream().filter(unit -> unit.getSettingDeg() != null).<RecordedEdit>map(
                    unit -> SetUnitSetting.to(unit, Math.round((unit.getSettingDeg() + byDeg) * STEPS_PER_DEG) / STEPS_PER_DEG)).toList();
            return parts.size() == 1 ? parts.get(0) : Compound.of(Messages.get("section.edit.turn"), parts);
        };
    }

    /**
     * Moves units along the runway, metres in the landing direction.
     *
     * @param byM  how far
     * @param only label of the only unit to move; empty for the whole aid
     */
    public static Function<ApproachAid, RecordedEdit> move(double byM, Optional<String> only) {
        return aid -> only.isEmpty() ? MoveAid.by(aid, byM, 0) : MoveUnits.by(units(aid, only), byM, 0);
    }

    private static List<LightUnit> units(ApproachAid aid, Optional<String> only) {
        return aid.getUnits().stream().filter(unit -> only.isEmpty() || only.get().equals(label(unit))).toList();
    }

    /** Returns the name of a unit, as its plan carries it. */
    private static String label(LightUnit unit) {
        return unit.getLabel() == null ? String.valueOf(unit.getId()) : unit.getLabel();
    }
}
