package slopewright.ui.theme;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;

/**
 * The texts that a canvas paints: written through it they are known with place and colour, so that none covers another and what is
 * painted can be looked at from outside.
 */
public final class Lettering {

    private static final String KEY = "slopewright.ui.theme.lettering";

    private final List<Written> written = new ArrayList<>();

    /**
     * One text as it was painted last.
     *
     * @param text  the text
     * @param where its place, pixels of the canvas
     * @param ink   its colour
     */
    public record Written(String text, Rectangle where, RGB ink) {
    }

    private Lettering() {
    }

    /** Makes the lettering of a canvas. */
    public static Lettering on(Control canvas) {
        Lettering made = new Lettering();
        canvas.setData(KEY, made);
        return made;
    }

    /** Returns the lettering of a canvas, empty where it has none. */
    public static Optional<Lettering> of(Control canvas) {
        return Optional.ofNullable((Lettering) canvas.getData(KEY));
    }

    /** Forgets what was painted, at the beginning of a painting. */
    public void begin() {
        written.clear();
    }

    /** Returns what was painted last, the lowest first. */
    public List<Written> written() {
        return List.copyOf(written);
    }

    /**
     * Writes a text in the foreground of a graphics context.
     *
     * @param gc   paints
     * @param text the text
     * @param x    left, pixels
     * @param y    top, pixels
     */
    public void write(GC gc, String text, int x, int y) {
        Point size = gc.textExtent(text);
        note(text, new Rectangle(x, y, size.x, size.y), gc.getForeground().getRGB());
        gc.drawText(text, x, y, true);
    }

    /** Writes a text unless it would cover one that is there; returns whether it was written. */
    public boolean writeWhereFree(GC gc, String text, int x, int y) {
        Point size = gc.textExtent(text);
        if (!isFree(new Rectangle(x, y, size.x, size.y))) {
            return false;
        }
        write(gc, text, x, y);
        return true;
    }

    /** Returns whether nothing was written in a place. */
    public boolean isFree(Rectangle where) {
        return written.stream().noneMatch(other -> other.where().intersects(where));
    }

    /** Notes a text that something else has painted. */
    public void note(String text, Rectangle where, RGB ink) {
        if (!text.isBlank()) {
            written.add(new Written(text, where, ink));
        }
    }

    /** Returns that one of two inks which is told better from a ground. */
    public static Color clearer(RGB ground, Color one, Color other) {
        return contrast(one.getRGB(), ground) >= contrast(other.getRGB(), ground) ? one : other;
    }

    /** The contrast of two colours by WCAG 2.1, from 1 to 21. */
    private static double contrast(RGB one, RGB other) {
        double a = luminance(one) + 0.05;
        double b = luminance(other) + 0.05;
        return Math.max(a, b) / Math.min(a, b);
    }

    private static double luminance(RGB colour) {
        return 0.2126 * linear(colour.red) + 0.7152 * linear(colour.green) + 0.0722 * linear(colour.blue);
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
