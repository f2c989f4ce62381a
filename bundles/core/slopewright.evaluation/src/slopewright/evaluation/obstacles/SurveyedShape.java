package slopewright.evaluation.obstacles;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.geometry.FramePoint;
import slopewright.geometry.Penetration;
import slopewright.geometry.ProtectionSurface;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Identified;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.Place;
import slopewright.model.SurveyBlock;
import slopewright.siting.ElementNames;
import slopewright.siting.SitingException;
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

    /** How far off a place may be of which nobody says how well it was surveyed, metres; that of the coarsest surveys in use (own band). */
    static final double UNKNOWN_HORIZONTAL_M = 50;
    /** How much higher a top may be of which nobody says how well it was surveyed, metres; that of the coarsest surveys (own band). */
    private static final double UNKNOWN_VERTICAL_M = 30;

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

    /** Returns whether it is said how accurately an obstacle or a survey block was surveyed, in plan and in height. */
    static boolean isAccuracyKnown(Identified element) {
        return isPlaceKnown(element) && verticalM(element) != null;
    }

    /** Returns whether it is said how accurately an obstacle or a survey block was surveyed in plan. */
    static boolean isPlaceKnown(Identified element) {
        return horizontalM(element) != null;
    }

    /** Returns whether an accuracy says anything, metres: no survey is exact, so one of nothing is none that is known. */
    public static boolean isAccuracy(Double accuracyM) {
        return accuracyM != null && accuracyM != 0;
    }

    private static Double horizontalM(Identified element) {
        return known(element instanceof Obstacle obstacle ? obstacle.getHorizontalAccuracyM()
                : ((SurveyBlock) element).getHorizontalAccuracyM());
    }

    private static Double verticalM(Identified element) {
        return known(element instanceof Obstacle obstacle ? obstacle.getVerticalAccuracyM()
                : ((SurveyBlock) element).getVerticalAccuracyM());
    }

    private static Double known(Double accuracyM) {
        return isAccuracy(accuracyM) ? accuracyM : null;
    }

    /** Returns how much higher an obstacle or the points of a block may stand, metres, where nobody says how well their place is known. */
    static double mostVerticalM(Identified element) {
        Double verticalM = verticalM(element);
        return verticalM == null ? UNKNOWN_VERTICAL_M : Math.abs(verticalM);
    }

    /** Returns the shape as far off and as high as the obstacle may stand, where nobody says how well its place is known. */
    SurveyedShape atMost(Obstacle obstacle) {
        return new SurveyedShape(kind, points, UNKNOWN_HORIZONTAL_M, mostVerticalM(obstacle));
    }

    /**
     * Brings an obstacle of the model into a frame. An accuracy that was not entered counts as zero; whoever compares asks
     * {@link #isAccuracyKnown}.
     *
     * @param obstacle the obstacle
     * @param frame    the frame
     * @return the shape
     * @throws slopewright.siting.SitingException where place or top elevation are missing; the message names the obstacle
     */
    public static SurveyedShape of(Obstacle obstacle, SiteFrame frame) {
        double horizontal = orZero(obstacle.getHorizontalAccuracyM());
        double vertical = orZero(obstacle.getVerticalAccuracyM());
        return new SurveyedShape(Kind.valueOf(obstacle.getKind().getName()), topsOf(obstacle, frame), horizontal, vertical);
    }

    /** A wrong sign must not lower an obstacle: it is a finding of its own, and its size counts. */
    private static double orZero(Double accuracyM) {
        return accuracyM == null ? 0 : Math.abs(accuracyM);
    }

    /** Where place and obstacle both give a top, the higher one counts: no entry may lower what another one says. */
    private static Double higher(Double first, Double second) {
        return first == null || second == null ? first == null ? second : first : Double.valueOf(Math.max(first, second));
    }

    private static List<FramePoint> topsOf(Obstacle obstacle, SiteFrame frame) {
        List<FramePoint> points = new ArrayList<>();
        for (Place place : obstacle.getPlaces()) {
            Double top = higher(place.getElevationM(), obstacle.getTopElevationM());
            if (top == null) {
                throw new SitingException(Message.of("evaluation.obstacle-without-top", ElementNames.of(obstacle)));
            }
            points.add(frame.toFrame(place, top));
        }
        int least = obstacle.getKind() == ObstacleKind.AREA ? 3 : obstacle.getKind() == ObstacleKind.LINE ? 2 : 1;
        if (points.size() < least) {
            throw new SitingException(Message.of("evaluation.obstacle-without-places", ElementNames.of(obstacle),
                    Words.count(points.size()), Words.count(least)));
        }
        return points;
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
