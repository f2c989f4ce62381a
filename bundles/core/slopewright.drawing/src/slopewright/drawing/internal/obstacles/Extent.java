package slopewright.drawing.internal.obstacles;

import slopewright.evaluation.obstacles.SurveyedShape;
import slopewright.geometry.FramePoint;

/**
 * How far a shape reaches in the frame.
 *
 * @param firstM  the end farthest out, metres in the landing direction
 * @param lastM   the other end, metres in the landing direction
 * @param topM    its top, metres above the origin
 * @param offsetM how far right of the centre line its nearest corner stands, metres; negative on the left, 0 where it lies across
 */
public record Extent(double firstM, double lastM, double topM, double offsetM) {

    /** Measures a shape. */
    public static Extent of(SurveyedShape shape) {
        if (shape.points().size() == 1) {
            FramePoint point = shape.points().get(0);
            return new Extent(point.alongM(), point.alongM(), point.heightM(), point.rightM());
        }
        double first = Double.POSITIVE_INFINITY;
        double last = Double.NEGATIVE_INFINITY;
        double top = Double.NEGATIVE_INFINITY;
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        for (FramePoint point : shape.points()) {
            first = Math.min(first, point.alongM());
            last = Math.max(last, point.alongM());
            top = Math.max(top, point.heightM());
            left = Math.min(left, point.rightM());
            right = Math.max(right, point.rightM());
        }
        return new Extent(first, last, top, left <= 0 && right >= 0 ? 0 : Math.abs(left) < Math.abs(right) ? left : right);
    }
}
