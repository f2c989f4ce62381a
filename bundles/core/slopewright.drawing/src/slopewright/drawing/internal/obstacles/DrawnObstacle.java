package slopewright.drawing.internal.obstacles;

import java.util.Optional;

import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.evaluation.obstacles.ObstacleField;
import slopewright.evaluation.obstacles.SurveyedShape;

/**
 * An obstacle that has a place in the frame.
 *
 * @param placed   the obstacle with its shape
 * @param extent   how far it reaches
 * @param compared how it stands against the obstacle surface; empty where it stands beside it, or there is none
 */
public record DrawnObstacle(ObstacleField.Placed placed, Extent extent, Optional<ObstacleComparison> compared) {

    /** Returns the id of the element. */
    public String id() {
        return String.valueOf(placed.obstacle().getId());
    }

    /** Returns its name. */
    public String label() {
        return placed.label();
    }

    /** Returns its shape. */
    public SurveyedShape shape() {
        return placed.shape();
    }

    /** Returns whether it stands under or in the surface, seen in plan. */
    public boolean isInside() {
        return compared.isPresent();
    }

    /** Returns whether it stands through the surface, whatever shields it. */
    public boolean isThrough() {
        return compared.filter(ObstacleComparison::isPenetrating).isPresent();
    }

    /** Returns the height of the surface above it, metres; infinite where it stands beside it. */
    public double marginM() {
        return compared.map(ObstacleComparison::marginM).orElse(Double.POSITIVE_INFINITY);
    }
}
