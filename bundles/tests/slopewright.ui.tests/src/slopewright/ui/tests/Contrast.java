package slopewright.ui.tests;

import java.util.HashMap;
import java.util.Map;

import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;

/** How well colours are told apart, by the open accessibility guideline WCAG 2.1, as they are named or as they are painted. */
final class Contrast {

    /** Least contrast of text: criterion 1.4.3. */
    static final double LEAST = 4.5;

    private Contrast() {
    }

    /** What a control shows now. */
    static ImageData painted(Control control) {
        control.update();
        Image image = new Image(Display.getCurrent(), Math.max(1, control.getSize().x), Math.max(1, control.getSize().y));
        GC gc = new GC(control);
        try {
            gc.copyArea(image, 0, 0);
            return image.getImageData();
        } finally {
            gc.dispose();
            image.dispose();
        }
    }

    /** The contrast of what stands in a part of a picture: of its commonest colour and the one that differs most from that; 1 for one. */
    static double in(ImageData picture, Rectangle part) {
        Map<RGB, Integer> colours = new HashMap<>();
        Rectangle inside = part.intersection(new Rectangle(0, 0, picture.width, picture.height));
        for (int x = inside.x; x < inside.x + inside.width; x++) {
            for (int y = inside.y; y < inside.y + inside.height; y++) {
                colours.merge(picture.palette.getRGB(picture.getPixel(x, y)), 1, Integer::sum);
            }
        }
        RGB ground = colours.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey).orElse(new RGB(0, 0, 0));
        return colours.keySet().stream().mapToDouble(colour -> of(colour, ground)).max().orElse(1);
    }

    /** The contrast of two colours, from 1 to 21. */
    static double of(RGB one, RGB other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    /** The contrast of two colours, from 1 to 21. */
    static double of(Color one, Color other) {
        return of(one.getRGB(), other.getRGB());
    }

    /** The relative luminance of a colour, from 0 to 1. */
    static double luminance(RGB colour) {
        return 0.2126 * linear(colour.red) + 0.7152 * linear(colour.green) + 0.0722 * linear(colour.blue);
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
