package slopewright.evaluation.obstacles;

import java.util.Objects;
import java.util.Optional;

import slopewright.geometry.Penetration;
import slopewright.model.Identified;
import slopewright.model.Obstacle;
import slopewright.model.SurveyBlock;

/**
 * One thing that stands there against one surface, the accuracy of its survey on the safe side: an obstacle, or the governing point of a
 * block of survey points.
 *
 * @param element   the obstacle or the survey block
 * @param label     what it is called, for people; for a block with the name of the point
 * @param worst     where it stands highest against the surface
 * @param shielding whether something shields it
 * @param block     for a block, how many of its points lie within the surface and above it
 */
public record ObstacleComparison(Identified element, String label, Penetration worst, Shielding shielding, Optional<BlockCount> block) {

    /**
     * How the points of a block lie.
     *
     * @param points number of points of the block
     * @param inside how many lie under or over the surface
     * @param above  how many stand above it
     * @param point  name of the governing one
     */
    public record BlockCount(int points, int inside, int above, String point) {
    }

    /** Refuses missing parts. */
    public ObstacleComparison {
        Objects.requireNonNull(element);
        Objects.requireNonNull(label);
        Objects.requireNonNull(worst);
        Objects.requireNonNull(shielding);
        Objects.requireNonNull(block);
    }

    /** Returns the height of the surface above it, metres; negative where it stands through. */
    public double marginM() {
        return -worst.excessM();
    }

    /** Returns whether it stands above the surface. */
    public boolean isPenetrating() {
        return worst.excessM() > 0;
    }

    /** Returns whether it stands above the surface and nothing that is named shields it. */
    public boolean isUnshieldedPenetration() {
        return isPenetrating() && !shielding.isBacked();
    }

    /** Returns the same comparison with another shielding. */
    ObstacleComparison with(Shielding other) {
        return new ObstacleComparison(element, label, worst, other, block);
    }

    /** Returns the obstacle, empty where it is a block of survey points. */
    public Optional<Obstacle> obstacle() {
        return element instanceof Obstacle obstacle ? Optional.of(obstacle) : Optional.empty();
    }

    /** Returns the block of survey points, empty where it is an obstacle. */
    public Optional<SurveyBlock> surveyBlock() {
        return element instanceof SurveyBlock survey ? Optional.of(survey) : Optional.empty();
    }
}
