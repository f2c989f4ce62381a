package slopewright.drawing.internal.obstacles;

import java.util.List;
import java.util.Optional;

import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.evaluation.obstacles.SurveyField;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.SurveyBlock;
import slopewright.siting.site.SurveyPoints;

/**
 * A block of survey points in the frame.
 *
 * @param block    the block
 * @param places   its points; the arrays are shared and must not be changed
 * @param compared its governing point against the obstacle surface; empty where no point lies within it, or there is none
 * @param above    every point that stands through the surface, the accuracy of the survey on the safe side
 */
public record DrawnBlock(SurveyBlock block, SurveyPoints.InFrame places, Optional<ObstacleComparison> compared,
        List<FramePoint> above) {

    /** Reads what was compared; only a block with points above the surface is gone through for them. */
    static DrawnBlock of(SurveyBlock block, SurveyField points, Optional<ObstacleComparison> compared,
            Optional<ProtectionSurface> surface) {
        boolean pierced = compared.flatMap(ObstacleComparison::block).filter(count -> count.above() > 0).isPresent();
        List<FramePoint> above = !pierced || surface.isEmpty() ? List.of()
                : points.above(surface.get(), Integer.MAX_VALUE).stream().map(SurveyField.Above::point).toList();
        return new DrawnBlock(block, points.places(), compared, above);
    }

    /** Returns the id of the element. */
    public String id() {
        return String.valueOf(block.getId());
    }

    /** Returns how many points it has. */
    public int count() {
        return places.alongM().length;
    }
}
