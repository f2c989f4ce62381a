package slopewright.drawing.sheet;

import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.ScenePoint;

/** Brings a scene onto paper: millimetres to the right and down. */
public final class Paper {

    private final Scene scene;
    private final double heightMm;
    private final double innerWidthMm;
    private final double innerHeightMm;
    private final double frameLeftMm;
    private final double scale;
    private final double left;
    private final double top;

    /**
     * Fits a scene into a frame on paper.
     *
     * @param scene     the scene
     * @param widthMm   width of the paper
     * @param maxHeight greatest height
     * @param edgeMm    blank edge on every side
     */
    public Paper(Scene scene, double widthMm, double maxHeight, double edgeMm) {
        this.scene = scene;
        double inner = widthMm - 2 * edgeMm;
        double wanted = inner / scene.aspect();
        double innerHeight = Math.min(wanted, maxHeight - 2 * edgeMm);
        innerWidthMm = inner;
        innerHeightMm = innerHeight;
        frameLeftMm = edgeMm;
        heightMm = innerHeight + 2 * edgeMm;
        scale = Math.min(inner / (scene.maxX() - scene.minX()), innerHeight / ((scene.maxY() - scene.minY()) * scene.exaggeration()));
        left = edgeMm + (inner - (scene.maxX() - scene.minX()) * scale) / 2;
        top = edgeMm;
    }

    /** Puts a scene into a frame at a place on paper. */
    Paper(Scene scene, double leftMm, double topMm, double innerWidthMm, double innerHeightMm) {
        this.scene = scene;
        this.innerWidthMm = innerWidthMm;
        this.innerHeightMm = innerHeightMm;
        frameLeftMm = leftMm;
        heightMm = topMm + innerHeightMm;
        scale = Math.min(innerWidthMm / (scene.maxX() - scene.minX()), innerHeightMm / ((scene.maxY() - scene.minY()) * scene
                .exaggeration()));
        left = leftMm + (innerWidthMm - (scene.maxX() - scene.minX()) * scale) / 2;
        top = topMm;
    }

    /** Returns millimetres from the left edge. */
    public double x(ScenePoint point) {
        return left + (point.x() - scene.minX()) * scale;
    }

    /** Returns millimetres from the upper edge. */
    public double y(ScenePoint point) {
        return top + (scene.maxY() - point.y()) * scale * scene.exaggeration();
    }

    /** Returns the whole height, millimetres. */
    public double heightMm() {
        return heightMm;
    }

    /** Returns the width inside the blank edges, millimetres. */
    public double innerWidthMm() {
        return innerWidthMm;
    }

    /** Returns the height inside the blank edges, millimetres. */
    public double innerHeightMm() {
        return innerHeightMm;
    }

    /** Returns where the frame begins, millimetres from the left edge. */
    double frameLeftMm() {
        return frameLeftMm;
    }

    /** Returns where the frame begins, millimetres from the upper edge. */
    double frameTopMm() {
        return top;
    }

    /** Returns millimetres on paper for one scene unit to the right. */
    public double scale() {
        return scale;
    }
}
