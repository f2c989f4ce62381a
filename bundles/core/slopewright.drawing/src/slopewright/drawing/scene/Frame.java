package slopewright.drawing.scene;

/**
 * The part of the plane that a scene shows.
 *
 * @param minX left edge, scene units
 * @param minY lower edge, scene units
 * @param maxX right edge, scene units
 * @param maxY upper edge, scene units
 */
public record Frame(double minX, double minY, double maxX, double maxY) {

    public double width() {
        return maxX - minX;
    }

    public double height() {
        return maxY - minY;
    }

    public boolean holds(ScenePoint point) {
        return point.x() >= minX && point.x() <= maxX && point.y() >= minY && point.y() <= maxY;
    }

    /** Returns a frame with the same middle that is at least as high, for the width, as one over the greatest aspect. */
    public Frame atMost(double aspect) {
        double missing = width() / aspect - height();
        return missing <= 0 ? this : new Frame(minX, minY - missing / 2, maxX, maxY + missing / 2);
    }

    /** Returns a frame with the same middle that is at least as wide, for the height, as the least aspect. */
    public Frame atLeast(double aspect) {
        double missing = height() * aspect - width();
        return missing <= 0 ? this : new Frame(minX - missing / 2, minY, maxX + missing / 2, maxY);
    }
}
