package slopewright.ui.diagram;

import java.util.Collection;
import java.util.Optional;

import slopewright.drawing.scene.ScenePoint;

/**
 * A box in the world.
 *
 * @param minX left edge, metres
 * @param minY lower edge, metres
 * @param maxX right edge, metres
 * @param maxY upper edge, metres
 */
public record WorldBox(double minX, double minY, double maxX, double maxY) {

    /** Returns the smallest box around some points, empty where there are none. */
    public static Optional<WorldBox> around(Collection<ScenePoint> points) {
        return points.stream().map(point -> new WorldBox(point.x(), point.y(), point.x(), point.y())).reduce(WorldBox::and);
    }

    /** Returns the smallest box around this one and another. */
    public WorldBox and(WorldBox other) {
        return new WorldBox(Math.min(minX, other.minX), Math.min(minY, other.minY), Math.max(maxX, other.maxX), Math.max(maxY, other.maxY));
    }

    /** Returns the box with a margin on every side, metres. */
    public WorldBox grown(double byM) {
        return new WorldBox(minX - byM, minY - byM, maxX + byM, maxY + byM);
    }

    /** Returns the width, metres. */
    public double width() {
        return maxX - minX;
    }

    /** Returns the height, metres. */
    public double height() {
        return maxY - minY;
    }

    /** Returns whether this box and another have any place in common. */
    public boolean meets(WorldBox other) {
        return minX <= other.maxX && maxX >= other.minX && minY <= other.maxY && maxY >= other.minY;
    }

    /** Returns whether another box lies inside. */
    public boolean holds(WorldBox other) {
        return other.minX >= minX && other.maxX <= maxX && other.minY >= minY && other.maxY <= maxY;
    }

    /** Returns whether a place lies inside. */
    public boolean contains(double x, double y) {
        return x >= minX && x <= maxX && y >= minY && y <= maxY;
    }
}
