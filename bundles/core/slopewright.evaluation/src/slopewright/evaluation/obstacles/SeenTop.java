package slopewright.evaluation.obstacles;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import slopewright.siting.UnitPlan;

/**
 * Under which elevation the governing place of something that stands there is seen from the lenses of a layout: from the one that sees it
 * highest, in the plane of that unit's axis, as sectors are. A difference of elevations without curvature, the survey accuracy added, as
 * for the obstacle surface.
 *
 * @param unit     the unit that sees it highest
 * @param angleDeg the elevation, decimal degrees
 */
public record SeenTop(String unit, double angleDeg) {

    /** Refuses a missing name. */
    public SeenTop {
        Objects.requireNonNull(unit);
    }

    /**
     * Looks from every lens.
     *
     * @param units the units of the layout
     * @param found what stands there
     * @return the highest sight; empty where it stands abeam of all units or behind them
     */
    public static Optional<SeenTop> of(List<UnitPlan> units, ObstacleComparison found) {
        return units.stream().map(unit -> new SeenTop(unit.id(), unit.elevationDeg(found.worst().point())))
                .filter(seen -> !Double.isNaN(seen.angleDeg())).max(Comparator.comparingDouble(SeenTop::angleDeg));
    }
}
