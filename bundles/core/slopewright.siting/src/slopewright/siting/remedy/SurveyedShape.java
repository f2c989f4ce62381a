package slopewright.siting.remedy;

import java.util.List;
import java.util.Optional;

import slopewright.geometry.FramePoint;
import slopewright.geometry.Penetration;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.Obstacle;
import slopewright.siting.site.ObstacleShapes;
import slopewright.siting.site.SiteFrame;

/**
 * An obstacle in the frame of a runway end or helipad with how well it was surveyed.
 *
 * @param kind                point, line or area
 * @param points              its places at their top heights, metres in the frame, at least one
 * @param horizontalAccuracyM radius in which the true place may lie, metres, zero or more
 * @param verticalAccuracyM   by how much it may stand higher, metres, zero or more
 */
public record SurveyedShape(Kind kind, List<FramePoint> points, double horizontalAccuracyM, double verticalAccuracyM) {

    /** What an obstacle looks like in plan. */
    public enum Kind {
        /** One place. */
        POINT,
        /** Straight pieces. */
        LINE,
        /** A ring. */
        AREA
    }

    /** Copies the points. */
    public SurveyedShape {
        points = List.copyOf(points);
    }

    /**
     * Brings an obstacle of the model into a frame. An accuracy that was not entered counts as zero.
     *
     * @param obstacle the obstacle
     * @param frame    the frame
     * @return the shape
     * @throws slopewright.siting.SitingException where place or top elevation are missing; the message names the obstacle
     */
    public static SurveyedShape of(Obstacle obstacle, SiteFrame frame) {
        double horizontal = obstacle.getHorizontalAccuracyM() == null ? 0 : obstacle.getHorizontalAccuracyM();
        double vertical = obstacle.getVerticalAccuracyM() == null ? 0 : obstacle.getVerticalAccuracyM();
        return new SurveyedShape(Kind.valueOf(obstacle.getKind().getName()), ObstacleShapes.points(obstacle, frame), horizontal, vertical);
    }

    /**
     * Compares the shape with a surface, its accuracy on the safe side.
     *
     * @param surface the surface
     * @return the worst place, empty where the shape lies outside
     */
    public Optional<Penetration> compare(ProtectionSurface surface) {
        return switch (kind) {
            case POINT -> surface.compare(points.get(0), horizontalAccuracyM, verticalAccuracyM);
            case LINE -> surface.compareLine(points, horizontalAccuracyM, verticalAccuracyM);
            case AREA -> surface.compareArea(points, horizontalAccuracyM, verticalAccuracyM);
        };
    }
}
