package slopewright.ui.plan.internal.palette;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;

import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.RGB;

/** Colours and images with light and dark changed over and the hue kept: black becomes nearly white, white nearly black. */
final class TurnedColours {

    private static final float OF_BLACK = 0.92f;
    private static final float OF_WHITE = 0.16f;
    private static final int WHITE = 255;
    private static final int HALF = 128;

    private final Map<RGB, Color> colours = new HashMap<>();
    private final Map<Image, Image> images = new IdentityHashMap<>();

    /** Returns whether a ground is dark. */
    static boolean isDark(RGB colour) {
        return lightness(colour) < HALF;
    }

    /** Returns a colour changed over; one that was made here stays as it is. */
    Color of(Color colour) {
        return colours.containsValue(colour) ? colour : colours.computeIfAbsent(colour.getRGB(), rgb -> new Color(turn(rgb)));
    }

    /** Returns an image whose dark strokes are light, owned by this. */
    Image of(Image image) {
        return images.computeIfAbsent(image, this::lit);
    }

    /** Frees the images. */
    void dispose() {
        images.values().forEach(Image::dispose);
        images.clear();
    }

    private Image lit(Image image) {
        ImageData from = image.getImageData();
        ImageData to = new ImageData(from.width, from.height, 32, new PaletteData(0xff0000, 0xff00, 0xff));
        to.alphaData = new byte[from.width * from.height];
        for (int y = 0; y < from.height; y++) {
            for (int x = 0; x < from.width; x++) {
                RGB rgb = from.palette.getRGB(from.getPixel(x, y));
                to.setPixel(x, y, to.palette.getPixel(isDark(rgb) ? turn(rgb) : rgb));
                to.setAlpha(x, y, from.getAlpha(x, y));
            }
        }
        return new Image(image.getDevice(), to);
    }

    /** Moves all three channels by the same amount of lightness, so that the hue stays. */
    private static RGB turn(RGB rgb) {
        float before = lightness(rgb) / WHITE;
        float after = OF_BLACK + (OF_WHITE - OF_BLACK) * before;
        float room = before > after ? after / before : (1 - after) / (1 - before);
        return new RGB(channel(rgb.red, before, after, room), channel(rgb.green, before, after, room),
                channel(rgb.blue, before, after, room));
    }

    private static int channel(int value, float before, float after, float room) {
        return Math.round(WHITE * Math.max(0, Math.min(1, after + ((float) value / WHITE - before) * room)));
    }

    private static float lightness(RGB rgb) {
        return (Math.max(rgb.red, Math.max(rgb.green, rgb.blue)) + Math.min(rgb.red, Math.min(rgb.green, rgb.blue))) / 2f;
    }
}
