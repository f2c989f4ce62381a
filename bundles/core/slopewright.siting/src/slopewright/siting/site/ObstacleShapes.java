package slopewright.siting.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.geometry.FramePoint;
import slopewright.geometry.Penetration;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.Place;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;

/** Obstacles of the model against surfaces, in the frame of one runway end or helipad. */
public final class ObstacleShapes {

    private ObstacleShapes() {
    }

    /**
     * Brings the places of an obstacle into a frame.
     *
     * @param obstacle the obstacle
     * @param frame    the frame
     * @return its points at their top elevations, in document order, at least one
     * @throws SitingException where place or top elevation are missing; the message names the obstacle
     */
    public static List<FramePoint> points(Obstacle obstacle, SiteFrame frame) {
        List<FramePoint> points = new ArrayList<>();
        for (Place place : obstacle.getPlaces()) {
            Double top = place.getElevationM() != null ? place.getElevationM() : obstacle.getTopElevationM();
            if (top == null) {
                throw new SitingException("the top elevation of obstacle " + Projects.label(obstacle) + " is missing");
            }
            points.add(frame.toFrame(place, top));
        }
        int least = obstacle.getKind() == ObstacleKind.AREA ? 3 : obstacle.getKind() == ObstacleKind.LINE ? 2 : 1;
        if (points.size() < least) {
            throw new SitingException("obstacle " + Projects.label(obstacle) + " has " + points.size() + " places where " + least
                    + " are needed");
        }
        return points;
    }

    /**
     * Compares an obstacle with a surface, its survey accuracy on the safe side.
     *
     * @param obstacle the obstacle
     * @param frame    the frame of the surface
     * @param surface  the surface
     * @return the worst place, empty where the obstacle lies outside
     * @throws SitingException where the obstacle lacks a number
     */
    public static Optional<Penetration> compare(Obstacle obstacle, SiteFrame frame, ProtectionSurface surface) {
        List<FramePoint> points = points(obstacle, frame);
        double horizontal = obstacle.getHorizontalAccuracyM() == null ? 0 : obstacle.getHorizontalAccuracyM();
        double vertical = obstacle.getVerticalAccuracyM() == null ? 0 : obstacle.getVerticalAccuracyM();
        return switch (obstacle.getKind()) {
            case POINT -> surface.compare(points.get(0), horizontal, vertical);
            case LINE -> surface.compareLine(points, horizontal, vertical);
            case AREA -> surface.compareArea(points, horizontal, vertical);
        };
    }
}
