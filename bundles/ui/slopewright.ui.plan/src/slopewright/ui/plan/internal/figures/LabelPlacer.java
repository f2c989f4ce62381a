package slopewright.ui.plan.internal.figures;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.draw2d.geometry.Rectangle;

/** Finds room for labels beside symbols that may stand close together: each keeps clear of the symbols and of the labels before it. */
final class LabelPlacer {

    private static final int STEPS = 14;
    private static final int CLEAR_PX = 2;

    private final List<Rectangle> taken = new ArrayList<>();

    /** Keeps a square around a symbol free. */
    void keepFree(double x, double y, double halfPx) {
        taken.add(new Rectangle((int) Math.floor(x - halfPx), (int) Math.floor(y - halfPx), (int) Math.ceil(2 * halfPx),
                (int) Math.ceil(2 * halfPx)));
    }

    /**
     * Finds room for a label that is moved away from its symbol in one direction until it is free.
     *
     * @param x      middle of the symbol, pixels
     * @param y      middle of the symbol, pixels
     * @param width  width of the label, pixels
     * @param height height of the label, pixels
     * @param toX    direction, pixels to the right for one pixel of distance
     * @param toY    direction, pixels down for one pixel of distance
     * @return where it lies; where all room is taken, the farthest place that was tried
     */
    Rectangle place(double x, double y, int width, int height, double toX, double toY) {
        Rectangle box = new Rectangle();
        for (int i = 0; i < STEPS; i++) {
            double far = 11 + i * (height * 0.5 + CLEAR_PX);
            double middleX = x + toX * (far + width / 2.0 * Math.abs(toX));
            double middleY = y + toY * (far + height / 2.0 * Math.abs(toY));
            box = new Rectangle((int) Math.round(middleX - width / 2.0), (int) Math.round(middleY - height / 2.0), width, height);
            Rectangle tried = box.getExpanded(CLEAR_PX, 0);
            if (taken.stream().noneMatch(known -> known.intersects(tried))) {
                break;
            }
        }
        taken.add(box);
        return box;
    }
}
