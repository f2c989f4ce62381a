package slopewright.evaluation.portable;

import java.util.Optional;

import slopewright.evaluation.AidEvaluation;
import slopewright.geometry.Angles;
import slopewright.siting.Siting;
import slopewright.siting.descent.DescentSlope;

/**
 * The slope that the hand sets beside that of the planned descent.
 *
 * @param plannedDeg slope of the planned descent, decimal degrees
 * @param setDeg     slope that is set, decimal degrees: the worse of the layout and of the nearest mark of the scale
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
            Siting siting = evaluation.layout().orThrow();
            double planned = descent.slopeDeg();
            double worst = SlopeScale.of(evaluation.aid().getEquipment()).stream().flatMap(scale -> siting.units().stream()
                    .map(unit -> siting.slopeDeg() + Angles.minutesToDeg(scale.mark(unit.settingDeg()).offMin())))
                    .reduce(siting.slopeDeg(), (one, next) -> Math.abs(next - planned) > Math.abs(one - planned) ? next : one);
            return new PlannedDescent(planned, worst, SettingAllowance.of(evaluation));
        });
    }

    /** Returns by how much the set slope is steeper, minutes of arc, negative where it is flatter. */
    public double offMin() {
        return Angles.degToMinutes(setDeg - plannedDeg);
    }
}
