package slopewright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.TestReporter;

/** How well colours are told apart, by the open accessibility guideline WCAG 2.1, as they are named or as they are painted. */
final class Contrast {

    /** Least contrast of text: criterion 1.4.3. */
    static final double LEAST = 4.5;
    /** Least contrast of lines that say something: criterion 1.4.11. */
    static final double LEAST_OF_LINES = 3;
    /** What is told from its ground by less is a line between cells, and no word. */
    static final double FAINTEST = 1.3;

    private static final double GROUND_SHARE = 0.1;
    private static final double SAME_INK = 40;
    private static final double NEAR_INK = 160;
    private static final int COARSE = 8;
    private static final int LEAST_BAND = 5;

    private Contrast() {
    }

    /** Keeps a least contrast as a figure of a run, under target too, and holds it against the least that text may have. */
    static void record(TestReporter report, String surfaces, String theme, double least) throws IOException {
        String figure = String.format(Locale.ROOT, "%.2f", least);
        report.publishEntry("least contrast of " + surfaces + ", " + theme, figure);
        Files.writeString(Path.of("target", "contrast-" + surfaces.replace(' ', '-') + "-" + theme + ".txt"), figure + "\n");
        assertTrue(least >= LEAST && least < Double.MAX_VALUE, surfaces + ", " + theme + ": " + figure);
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

    /** What a part of the screen shows now, menus included. */
    static ImageData onScreen(Rectangle part) {
        Image image = new Image(Display.getCurrent(), part.width, part.height);
        GC gc = new GC(Display.getCurrent());
        try {
            gc.copyArea(image, part.x, part.y);
            return image.getImageData();
        } finally {
            gc.dispose();
            image.dispose();
        }
    }

    /** Bands of rows in which something stands on the ground of a picture, from the top, so many at most; thin ones are separators. */
    static List<Rectangle> bands(ImageData picture, int most) {
        RGB ground = picture.palette.getRGB(picture.getPixel(2, 2));
        List<Rectangle> found = new ArrayList<>();
        int top = -1;
        for (int y = 0; y < picture.height && found.size() < most; y++) {
            boolean blank = true;
            for (int x = 0; x < picture.width && blank; x++) {
                blank = of(picture.palette.getRGB(picture.getPixel(x, y)), ground) < FAINTEST;
            }
            if (!blank && top < 0) {
                top = y;
            } else if (blank && top >= 0) {
                if (y - top >= LEAST_BAND) {
                    found.add(new Rectangle(0, top, picture.width, y - top));
                }
                top = -1;
            }
        }
        return found;
    }

    /** The contrast of what stands in a part of a picture: of its commonest colour and the one furthest from that; 1 for one. */
    static double in(ImageData picture, Rectangle part) {
        Map<RGB, Integer> colours = colours(picture, part.intersection(new Rectangle(0, 0, picture.width, picture.height)));
        RGB ground = colours.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey).orElse(new RGB(0, 0, 0));
        return colours.keySet().stream().mapToDouble(colour -> of(colour, ground)).max().orElse(1);
    }

    /**
     * The contrast of a text as it is painted, which is what comes nearest to its ink, with whatever fills a tenth of its place or more;
     * 0 where nothing comes near, for the text is then not painted as it was said.
     */
    static double ofText(ImageData picture, Rectangle part, RGB ink) {
        Map<RGB, Integer> colours = colours(picture, part.intersection(new Rectangle(0, 0, picture.width, picture.height)));
        RGB painted = colours.keySet().stream().min(Comparator.comparingDouble(colour -> distance(colour, ink))).orElse(ink);
        if (distance(painted, ink) > NEAR_INK) {
            return 0;
        }
        Map<RGB, Integer> grounds = new HashMap<>();
        colours.forEach((colour, count) -> grounds.merge(coarse(colour), count, Integer::sum));
        double area = grounds.values().stream().mapToInt(Integer::intValue).sum();
        return grounds.entrySet().stream().filter(entry -> entry.getValue() / area >= GROUND_SHARE)
                .filter(entry -> distance(entry.getKey(), ink) > SAME_INK).mapToDouble(entry -> of(entry.getKey(), painted)).min()
                .orElse(1);
    }

    /** Colours that nobody tells apart count as one. */
    private static RGB coarse(RGB colour) {
        return new RGB(colour.red / COARSE * COARSE + COARSE / 2, colour.green / COARSE * COARSE + COARSE / 2,
                colour.blue / COARSE * COARSE + COARSE / 2);
    }

    private static double distance(RGB one, RGB other) {
        return Math.sqrt(Math.pow(one.red - other.red, 2) + Math.pow(one.green - other.green, 2) + Math.pow(one.blue - other.blue, 2));
    }

    private static Map<RGB, Integer> colours(ImageData picture, Rectangle inside) {
        Map<RGB, Integer> colours = new HashMap<>();
        for (int x = inside.x; x < inside.x + inside.width; x++) {
            for (int y = inside.y; y < inside.y + inside.height; y++) {
                colours.merge(picture.palette.getRGB(picture.getPixel(x, y)), 1, Integer::sum);
            }
        }
        return colours;
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
