package slopewright.drawing.section;

import slopewright.drawing.scene.ScenePoint;

/**
 * What a section shows, and how large.
 *
 * @param minAlongM  left edge, metres in the landing direction
 * @param minHeightM lower edge, metres above the threshold
 * @param maxAlongM  right edge
 * @param maxHeightM upper edge
 * @param widthMm    width, millimetres
 * @param heightMm   height, millimetres
 */
public record SectionWindow(double minAlongM, double minHeightM, double maxAlongM, double maxHeightM, double widthMm, double heightMm) {

    /** Refuses an empty window. */
    public SectionWindow {
        if (!(maxAlongM > minAlongM) || !(maxHeightM > minHeightM) || !(widthMm > 0) || !(heightMm > 0)) {
            throw new IllegalArgumentException("a window needs some width and height");
        }
    }

    /** Returns how much more a metre upward takes than one to the right. */
    public double exaggeration() {
        return mmUp() / mmAlong();
    }

    /** Returns millimetres to the right for a metre. */
    double mmAlong() {
        return widthMm / (maxAlongM - minAlongM);
    }

    /** Returns millimetres upward for a metre. */
    double mmUp() {
        return heightMm / (maxHeightM - minHeightM);
    }

    /** Returns millimetres from the left edge. */
    double xMm(double alongM) {
        return (alongM - minAlongM) * mmAlong();
    }

    /** Returns millimetres from the lower edge. */
    double yMm(double heightM) {
        return (heightM - minHeightM) * mmUp();
    }

    /** Returns the place a number of millimetres from the left and from the lower edge. */
    ScenePoint at(double xMm, double yMm) {
        return new ScenePoint(minAlongM + xMm / mmAlong(), minHeightM + yMm / mmUp());
    }

    /** Returns whether a place can be seen. */
    public boolean holds(double alongM, double heightM) {
        return alongM >= minAlongM && alongM <= maxAlongM && heightM >= minHeightM && heightM <= maxHeightM;
    }
}
