package slopewright.ui.plan.internal.image;

import java.util.Optional;

import slopewright.drawing.scene.ScenePoint;
import slopewright.model.BackgroundImage;
import slopewright.ui.plan.internal.PlanContext;

/**
 * How a picture lies on the plan: turned, evenly scaled and shifted, as two of its points and their places say.
 *
 * @param alongX metres east for one column to the right
 * @param alongY metres north for one column to the right
 * @param x      metres east of the corner of the first pixel
 * @param y      metres north of it
 */
record ImagePlacement(double alongX, double alongY, double x, double y) {

    /** Makes a placement from two points of a picture, columns and rows, and their places; empty where they are too near. */
    static Optional<ImagePlacement> of(ScenePoint firstPx, ScenePoint first, ScenePoint secondPx, ScenePoint second) {
        double columns = secondPx.x() - firstPx.x();
        double rows = firstPx.y() - secondPx.y();
        double square = columns * columns + rows * rows;
        double east = second.x() - first.x();
        double north = second.y() - first.y();
        if (square < 1 || Math.hypot(east, north) < 0.1) {
            return Optional.empty();
        }
        double alongX = (east * columns + north * rows) / square;
        double alongY = (north * columns - east * rows) / square;
        return Optional.of(new ImagePlacement(alongX, alongY, first.x() - alongX * firstPx.x() - alongY * firstPx.y(),
                first.y() - alongY * firstPx.x() + alongX * firstPx.y()));
    }

    /** Returns how a picture of a project lies, empty where one of its points has no place. */
    static Optional<ImagePlacement> of(PlanContext context, BackgroundImage image) {
        Optional<ScenePoint> first = context.places().point(image.getFirstPlace());
        Optional<ScenePoint> second = context.places().point(image.getSecondPlace());
        if (first.isEmpty() || second.isEmpty() || image.getFirstColumnPx() == null || image.getFirstRowPx() == null
                || image.getSecondColumnPx() == null || image.getSecondRowPx() == null) {
            return Optional.empty();
        }
        return of(new ScenePoint(image.getFirstColumnPx(), image.getFirstRowPx()), first.get(),
                new ScenePoint(image.getSecondColumnPx(), image.getSecondRowPx()), second.get());
    }

    /** Returns how many metres one pixel is. */
    double metresPerPixel() {
        return Math.hypot(alongX, alongY);
    }

    /** Returns how far the picture is turned to the left, decimal degrees. */
    double turnDeg() {
        return Math.toDegrees(Math.atan2(alongY, alongX));
    }

    /** Returns where a point of the picture lies on the plan. */
    ScenePoint toPlan(double column, double row) {
        return new ScenePoint(x + alongX * column + alongY * row, y + alongY * column - alongX * row);
    }

    /** Returns which point of the picture, column and row, lies at a place of the plan. */
    ScenePoint toPicture(ScenePoint place) {
        double square = alongX * alongX + alongY * alongY;
        double east = place.x() - x;
        double north = place.y() - y;
        return new ScenePoint((east * alongX + north * alongY) / square, (east * alongY - north * alongX) / square);
    }
}
