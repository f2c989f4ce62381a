package slopewright.evaluation.portable;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

import slopewright.evaluation.AidEvaluation;
import slopewright.geometry.Angles;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;
import slopewright.siting.descent.DescentSlope;

/**
 * The slope that the hand sets beside that of the planned descent.
 *
 * @param plannedDeg slope of the planned descent, decimal degrees
 * @param setDeg     slope that is set, decimal degrees: that of the unit that is farthest off, as it is set or at the nearest mark
 * @param allowance  by how much a unit may be off
 */
public record PlannedDescent(double plannedDeg, double setDeg, SettingAllowance allowance) {

    /**
     * Compares an aid with its planned descent.
     *
     * @param evaluation the evaluation of the aid
     * @return the two slopes; empty where no speed and descent are entered
     * @throws slopewright.siting.SitingException where there is no layout, or speed and descent make no path
     */
    public static Optional<PlannedDescent> of(AidEvaluation evaluation) {
        return DescentSlope.of(evaluation.aid()).map(descent -> {
            double planned = descent.slopeDeg();
            double worst = slopesDeg(evaluation).reduce((one, next) -> Math.abs(next - planned) > Math.abs(one - planned) ? next : one)
                    .orElseThrow();
            return new PlannedDescent(planned, worst, SettingAllowance.of(evaluation));
        });
    }

    /**
     * Returns the slope of each unit as it is set, and at the nearest mark of its scale: its setting, less what the family sets that unit
     * above the slope in the layout as solved. What the aid names as its slope counts as well.
     */
    private static DoubleStream slopesDeg(AidEvaluation evaluation) {
        Siting siting = evaluation.layout().orThrow();
        Optional<SlopeScale> scale = SlopeScale.of(evaluation.aid().getEquipment());
        List<UnitPlan> solved = evaluation.solved().value().map(Siting::units).orElse(List.of());
        double solvedSlope = evaluation.solved().value().map(Siting::slopeDeg).orElse(0.0);
        DoubleStream set = siting.units().stream().flatMapToDouble(unit -> {
            double above = solved.stream().filter(wanted -> wanted.id().equals(unit.id())).findFirst()
                    .map(wanted -> wanted.settingDeg() - solvedSlope).orElse(0.0);
            double slope = unit.settingDeg() - above;
            return scale.map(found -> DoubleStream.of(slope, slope + Angles.minutesToDeg(found.mark(unit.settingDeg()).offMin())))
                    .orElse(DoubleStream.of(slope));
        });
        return DoubleStream.concat(DoubleStream.of(siting.slopeDeg()), set);
    }

    /** Returns by how much the set slope is steeper, minutes of arc, negative where it is flatter. */
    public double offMin() {
        return Angles.degToMinutes(setDeg - plannedDeg);
    }
}
