package slopewright.ui.diagram;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

/**
 * What part of the world a diagram shows: metres to the right and up on one side, pixels to the right and down on the other. Pixels are
 * fractions, so that nothing is rounded before it is painted. Used on the user interface thread.
 */
public final class WorldView {

    /** The least scale, pixels for a metre. */
    public static final double LEAST_SCALE = 0.002;
    /** The greatest scale, pixels for a metre. */
    public static final double GREATEST_SCALE = 400;

    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private double centreX;
    private double centreY;
    private double scale = 1;
    private double exaggeration = 1;
    private double widthPx;
    private double heightPx;
    private Optional<Fit> fit = Optional.empty();

    private record Fit(WorldBox box, double marginPx) {
    }

    /** Returns pixels from the left edge. */
    public double toX(double worldX) {
        return widthPx / 2 + (worldX - centreX) * scale;
    }

    /** Returns pixels from the upper edge. */
    public double toY(double worldY) {
        return heightPx / 2 - (worldY - centreY) * scale * exaggeration;
    }

    /** Returns metres to the right of the origin. */
    public double worldX(double x) {
        return centreX + (x - widthPx / 2) / scale;
    }

    /** Returns metres above the origin. */
    public double worldY(double y) {
        return centreY - (y - heightPx / 2) / (scale * exaggeration);
    }

    /** Returns pixels for a metre to the right. */
    public double scale() {
        return scale;
    }

    /** Returns how many times as many pixels a metre upward takes. */
    public double exaggeration() {
        return exaggeration;
    }

    /** Sets how many times as many pixels a metre upward takes as one to the right; more than zero. */
    public void setExaggeration(double value) {
        if (!(value > 0)) {
            throw new IllegalArgumentException("an exaggeration is more than zero, not " + value);
        }
        exaggeration = value;
        changed();
    }

    /** Returns the width of the window, pixels. */
    public double widthPx() {
        return widthPx;
    }

    /** Returns the height of the window, pixels. */
    public double heightPx() {
        return heightPx;
    }

    /** Returns what can be seen. */
    public WorldBox visible() {
        return new WorldBox(worldX(0), worldY(heightPx), worldX(widthPx), worldY(0));
    }

    /** Takes note of the size of the window. What was fitted and not moved since is fitted again; otherwise the middle stays. */
    public void resize(double newWidthPx, double newHeightPx) {
        if (newWidthPx == widthPx && newHeightPx == heightPx) {
            return;
        }
        widthPx = newWidthPx;
        heightPx = newHeightPx;
        fit.ifPresent(this::apply);
        changed();
    }

    /** Changes the scale about a place on the screen, which stays where it is. */
    public void zoomAt(double x, double y, double factor) {
        double toScale = Math.max(LEAST_SCALE, Math.min(GREATEST_SCALE, scale * factor));
        double keepX = worldX(x);
        double keepY = worldY(y);
        scale = toScale;
        centreX += keepX - worldX(x);
        centreY += keepY - worldY(y);
        fit = Optional.empty();
        changed();
    }

    /** Changes the scale about the middle of the window. */
    public void zoom(double factor) {
        zoomAt(widthPx / 2, heightPx / 2, factor);
    }

    /** Moves the world with the pointer by a number of pixels. */
    public void pan(double byX, double byY) {
        centreX -= byX / scale;
        centreY += byY / (scale * exaggeration);
        fit = Optional.empty();
        changed();
    }

    /** Brings a place into the middle. */
    public void centreOn(double worldX, double worldY) {
        centreX = worldX;
        centreY = worldY;
        fit = Optional.empty();
        changed();
    }

    /**
     * Shows a box as large as it fits, now and after each change of the window's size until the user moves the view.
     *
     * @param box      what is shown
     * @param marginPx how much stays free on every side
     */
    public void show(WorldBox box, double marginPx) {
        fit = Optional.of(new Fit(box, marginPx));
        fit.ifPresent(this::apply);
        changed();
    }

    private void apply(Fit wanted) {
        double innerWidth = Math.max(1, widthPx - 2 * wanted.marginPx());
        double innerHeight = Math.max(1, heightPx - 2 * wanted.marginPx());
        WorldBox box = wanted.box();
        double largest = Math.min(innerWidth / Math.max(1, box.width()), innerHeight / (Math.max(1, box.height()) * exaggeration));
        scale = Math.max(LEAST_SCALE, Math.min(GREATEST_SCALE, largest));
        centreX = (box.minX() + box.maxX()) / 2;
        centreY = (box.minY() + box.maxY()) / 2;
    }

    /** Adds a listener that is told of each change. */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    /** Removes a listener. */
    public void removeListener(Runnable listener) {
        listeners.remove(listener);
    }

    private void changed() {
        listeners.forEach(Runnable::run);
    }
}
