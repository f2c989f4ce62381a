package slopewright.ui.plan.internal.places;

import java.util.Optional;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.obstacles.ObstacleComparison;

/**
 * How an obstacle, or the governing point of a block of survey points, stands against the obstacle surface that it is worst for.
 *
 * @param comparison the comparison
 * @param aid        the aid whose surface it is
 */
public record Obstruction(ObstacleComparison comparison, AidEvaluation aid) {

    /** Returns the metres above the surface; negative below. */
    public double excessM() {
        return -comparison.marginM();
    }

    /** Returns the one that stands higher against its surface. */
    static Obstruction worse(Obstruction first, Obstruction second) {
        return second.comparison.marginM() < first.comparison.marginM() ? second : first;
    }

    /** Returns the one that stands higher against its surface; empty where there is none of them. */
    public static Optional<Obstruction> worse(Optional<Obstruction> first, Optional<Obstruction> second) {
        return first.isPresent() && second.isPresent() ? Optional.of(worse(first.get(), second.get())) : first.or(() -> second);
    }
}
