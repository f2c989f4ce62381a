package slopewright.drawing.section;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.drawing.scene.DrawnAid;
import slopewright.evaluation.obstacles.SurveyedShape;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.Obstacle;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;
import slopewright.siting.site.SiteFrame;

/**
 * The obstacles of a site against one obstacle surface, those that matter most first: through the surface, then under it by their
 * margin, then beside it by their distance from the centre line. Those far from the approach are left out.
 */
public final class SectionObstacles {

    /** How far beside the obstacle surface an obstacle is still shown, metres. */
    public static final double BESIDE_M = 300;

    private final List<SectionObstacle> worstFirst;

    /**
     * An obstacle in a frame, whatever the surface.
     *
     * @param id    id of the element
     * @param label its name
     * @param shape where it stands
     */
    public record Surveyed(String id, String label, SurveyedShape shape) {
    }

    private SectionObstacles(List<SectionObstacle> worstFirst) {
        this.worstFirst = worstFirst;
    }

    /**
     * Brings an obstacle into a frame.
     *
     * @param obstacle the obstacle
     * @param frame    the frame
     * @return empty where it has no place or height, which is a finding of its own
     */
    public static Optional<Surveyed> survey(Obstacle obstacle, SiteFrame frame) {
        try {
            return Optional.of(new Surveyed(String.valueOf(obstacle.getId()), Projects.label(obstacle), SurveyedShape.of(obstacle, frame)));
        } catch (SitingException e) {
            return Optional.empty();
        }
    }

    /**
     * Compares obstacles with a surface.
     *
     * @param surveyed the obstacles in the frame of the surface
     * @param surface  the surface; empty where there is none
     */
    public static SectionObstacles of(List<Surveyed> surveyed, Optional<ProtectionSurface> surface) {
        return new SectionObstacles(surveyed.stream()
                .map(one -> new SectionObstacle(one.id(), one.label(), one.shape(), surface.flatMap(one.shape()::compare)))
                .filter(one -> one.isInside() || isNear(one, surface))
                .sorted(Comparator.comparingDouble((SectionObstacle one) -> -one.excessM())
                        .thenComparingDouble(one -> Math.abs(one.offsetM())))
                .toList());
    }

    /** Brings the obstacles of a drawn aid into its frame and compares them with its surface. */
    public static SectionObstacles of(DrawnAid drawn) {
        return of(drawn.obstacles().stream().flatMap(one -> survey(one, drawn.frame()).stream()).toList(),
                drawn.siting().surface().map(plan -> plan.geometry()));
    }

    private static boolean isNear(SectionObstacle obstacle, Optional<ProtectionSurface> surface) {
        double reach = BESIDE_M + surface.map(one -> one.halfWidthM(Math.max(0, Math.min(one.lengthM(), one.startAlongM() - obstacle
                .firstM())))).orElse(0.0);
        return Math.abs(obstacle.offsetM()) <= reach;
    }

    /** Returns the obstacles, the worst first. */
    public List<SectionObstacle> worstFirst() {
        return worstFirst;
    }

    /** Returns how far the worst one stands above the surface, metres, negative below; empty where none stands under or in it. */
    public OptionalDouble worstExcessM() {
        return worstFirst.isEmpty() || !worstFirst.get(0).isInside() ? OptionalDouble.empty()
                : OptionalDouble.of(worstFirst.get(0).excessM());
    }
}
