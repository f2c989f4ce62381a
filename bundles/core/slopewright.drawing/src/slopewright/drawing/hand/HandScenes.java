package slopewright.drawing.hand;

import java.util.List;
import java.util.Locale;

import slopewright.drawing.internal.layout.SceneBuilder;
import slopewright.drawing.scene.Frame;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark.Anchor;
import slopewright.drawing.scene.PaperArea;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.Style;
import slopewright.evaluation.portable.AzimuthPlate;
import slopewright.evaluation.portable.HandUnit;
import slopewright.evaluation.portable.SlopeScale;
import slopewright.geometry.Angles;
import slopewright.model.PlateSense;

/**
 * Pictures of the steps in which a portable unit is set up: dark lines on white, a few large marks, nothing said by colour. Each fills a
 * square of a hundred units; compass pictures have magnetic north at the top.
 */
public final class HandScenes {
    private static final Frame SQUARE = new Frame(-50, -50, 50, 50);
    private static final Style THIN = Style.line(Ink.TEXT, 0.3);
    private static final Style LINE = Style.line(Ink.TEXT, 0.6);
    private static final Style THICK = Style.line(Ink.TEXT, 1.2);
    private static final Style DASHED = Style.dashed(Ink.TEXT, 0.5);
    private static final Style SOLID = Style.fill(Ink.TEXT);
    private static final double SMALL_MM = 2.2;
    private static final double LARGE_MM = 3.2;
    /** By how much the directions of several units are drawn apart, so that they are told from each other. */
    private static final double APART = 3;
    private static final double RIM = 29;
    private static final double NUMBERS = 38;
    private static final int PIECES = 48;
    private static final double FULL_DEG = 360;
    private static final int MOST_DECIMALS = 3;

    private HandScenes() {
    }

    /**
     * Draws the azimuth plate with its pointer.
     *
     * @param title   what the picture shows
     * @param plate   the plate
     * @param reading what the pointer reads
     * @return the scene
     */
    public static Scene plate(String title, AzimuthPlate plate, AzimuthPlate.Reading reading) {
        SceneBuilder scene = new SceneBuilder(PaperArea.usual());
        circle(scene, LINE, 0, 0, RIM);
        int sense = plate.sense() == PlateSense.CLOCKWISE ? 1 : -1;
        for (int at = 0; at < FULL_DEG; at += 10) {
            double bearing = reading.zeroMagneticDeg() + sense * at;
            double inner = at % 90 == 0 ? RIM - 6 : at % 30 == 0 ? RIM - 4 : RIM - 2;
            spoke(scene, at == 0 ? THICK : THIN, bearing, inner, RIM);
            if (at % 90 == 0) {
                double size = at == 0 ? LARGE_MM : SMALL_MM;
                scene.label(east(bearing, NUMBERS), north(bearing, NUMBERS), String.valueOf(at), Anchor.MIDDLE, size, -size / 2, Ink.TEXT,
                        "");
            }
        }
        circle(scene, SOLID, 0, 0, 2);
        arrow(scene, reading.zeroMagneticDeg() + sense * reading.markDeg(), 0, RIM - 1);
        compass(scene);
        return build(scene, title);
    }

    /**
     * Draws the walk from the hover point, or from the threshold, to every unit, and from where the helicopter or the aeroplane comes.
     *
     * @param title              what the picture shows
     * @param hands              the units
     * @param landingMagneticDeg landing direction by compass, decimal degrees
     * @param origin             the sign at the place from which is walked
     * @return the scene
     */
    public static Scene walk(String title, List<HandUnit> hands, double landingMagneticDeg, String origin) {
        SceneBuilder scene = new SceneBuilder(PaperArea.usual());
        double far = hands.stream().mapToDouble(HandUnit::walkM).max().orElse(1);
        double from = Angles.normaliseBearingDeg(landingMagneticDeg + FULL_DEG / 2);
        spoke(scene, DASHED, from, 12, 42);
        head(scene, from + FULL_DEG / 2, east(from, 12), north(from, 12));
        circle(scene, LINE, 0, 0, 9);
        scene.label(0, 0, origin, Anchor.MIDDLE, LARGE_MM, -LARGE_MM / 2, Ink.TEXT, "");
        double first = hands.get(0).walkMagneticDeg();
        double mean = hands.stream().mapToDouble(hand -> turn(first, hand.walkMagneticDeg())).average().orElse(0);
        for (HandUnit hand : hands) {
            double reach = Math.max(22, 40 * hand.walkM() / far);
            double bearing = first + mean + APART * (turn(first, hand.walkMagneticDeg()) - mean);
            spoke(scene, THICK, bearing, 9, reach - 5);
            double x = east(bearing, reach);
            double y = north(bearing, reach);
            scene.box(SOLID, "", x - 5, y - 5, x + 5, y + 5);
        }
        compass(scene);
        return build(scene, title);
    }

    /** Draws a round level whose bubble is in the middle, under the title of the picture. */
    public static Scene level(String title) {
        SceneBuilder scene = new SceneBuilder(PaperArea.usual());
        circle(scene, LINE, 0, 0, 40);
        circle(scene, THIN, 0, 0, 17);
        scene.path(THIN, "", -40, 0, -17, 0);
        scene.path(THIN, "", 17, 0, 40, 0);
        scene.path(THIN, "", 0, -40, 0, -17);
        scene.path(THIN, "", 0, 17, 0, 40);
        circle(scene, SOLID, 0, 0, 12);
        return build(scene, title);
    }

    /**
     * Draws the part of the slope scale around a mark.
     *
     * @param title what the picture shows
     * @param scale the scale
     * @param mark  the mark at which the pointer stands
     * @return the scene
     */
    public static Scene slope(String title, SlopeScale scale, SlopeScale.Mark mark) {
        SceneBuilder scene = new SceneBuilder(PaperArea.usual());
        scene.path(LINE, "", -46, 0, 46, 0);
        for (int i = -2; i <= 2; i++) {
            double x = 20 * i;
            boolean named = i % 2 == 0;
            scene.path(i == 0 ? THICK : THIN, "", x, 0, x, named ? 14 : 8);
            double value = mark.markDeg() + i * scale.stepDeg();
            if (named && value > -scale.stepDeg() / 2) {
                scene.label(i == 0 ? 0 : 17 * i, i == 0 ? 22 : 19, figure(value, scale.stepDeg()), Anchor.MIDDLE, i == 0 ? LARGE_MM
                        : SMALL_MM, 0, Ink.TEXT, "");
            }
        }
        scene.area(SOLID, "", 0, -3, -9, -24, 9, -24);
        return build(scene, title);
    }

    /**
     * Tells how many decimals the marks of a scale need.
     *
     * @param stepDeg from one mark to the next, decimal degrees
     * @return none to three
     */
    public static int decimals(double stepDeg) {
        int decimals = 0;
        for (double left = stepDeg; decimals < MOST_DECIMALS && Math.abs(left - Math.rint(left)) > 1e-6; left *= 10) {
            decimals++;
        }
        return decimals;
    }

    private static String figure(double value, double stepDeg) {
        return String.format(Locale.ROOT, "%." + decimals(stepDeg) + "f", value);
    }

    /** Draws the view through the sight, under the title of the picture: ground and trees stay below the lower hair. */
    public static Scene sight(String title) {
        SceneBuilder scene = new SceneBuilder(PaperArea.usual());
        scene.area(SOLID, "", -34, -22, -28, -16, -20, -13, -12, -18, -6, -12, 0, -19, 10, -20, 16, -12, 22, -18, 34, -21, 26, -32, 12, -39,
                0, -41, -12, -39, -26, -32);
        circle(scene, LINE, 0, 0, 41);
        scene.path(THICK, "", -41, -4, 41, -4);
        scene.path(LINE, "", -38, 15, 38, 15);
        scene.path(THIN, "", 0, -41, 0, 41);
        return build(scene, title);
    }

    /** Draws a battery, under the title of the picture. */
    public static Scene battery(String title) {
        SceneBuilder scene = new SceneBuilder(PaperArea.usual());
        scene.box(Style.area(Ink.TEXT, Ink.PAPER, 0.8), "", -42, -24, 34, 24);
        scene.box(SOLID, "", 34, -10, 42, 10);
        scene.path(THICK, "", 12, 0, 26, 0);
        scene.path(THICK, "", 19, -7, 19, 7);
        scene.path(THICK, "", -32, 0, -18, 0);
        return build(scene, title);
    }

    /**
     * Draws a switch.
     *
     * @param title what the picture shows
     * @param on    whether it is on
     * @return the scene
     */
    public static Scene power(String title, boolean on) {
        SceneBuilder scene = new SceneBuilder(PaperArea.usual());
        scene.box(Style.area(Ink.TEXT, Ink.PAPER, 0.8), "", -24, -42, 24, 42);
        scene.box(SOLID, "", -18, on ? 4 : -36, 18, on ? 36 : -4);
        if (on) {
            circle(scene, LINE, 0, -20, 9);
        } else {
            scene.path(THICK, "", 0, 12, 0, 30);
        }
        return build(scene, title);
    }

    /**
     * Draws what the unit shows, one light over the other, each named.
     *
     * @param title  what the picture shows
     * @param lights names of the lights, the lowest first
     * @return the scene
     */
    public static Scene lights(String title, List<String> lights) {
        SceneBuilder scene = new SceneBuilder(PaperArea.usual());
        double high = 80.0 / lights.size();
        for (int i = 0; i < lights.size(); i++) {
            double low = -40 + i * high;
            scene.box(Style.area(Ink.TEXT, Ink.PAPER, 0.5), "", -44, low, 44, low + high);
            scene.label(0, low + high / 2, lights.get(i), Anchor.MIDDLE, SMALL_MM, -SMALL_MM / 2, Ink.TEXT, "");
        }
        return build(scene, title);
    }

    private static Scene build(SceneBuilder scene, String title) {
        return scene.build(title, SQUARE, 1, List.of(), List.of(), Scene.Unit.NO_LENGTH);
    }

    /** Returns the turn from one bearing to another, decimal degrees, to the right more than zero. */
    private static double turn(double fromDeg, double toDeg) {
        return Angles.normaliseBearingDeg(toDeg - fromDeg + FULL_DEG / 2) - FULL_DEG / 2;
    }

    private static double east(double bearingDeg, double radius) {
        return radius * Math.sin(Math.toRadians(bearingDeg));
    }

    private static double north(double bearingDeg, double radius) {
        return radius * Math.cos(Math.toRadians(bearingDeg));
    }

    private static void compass(SceneBuilder scene) {
        scene.label(-44, 38, "N", Anchor.MIDDLE, SMALL_MM, 0, Ink.TEXT, "");
        scene.area(SOLID, "", -44, 36, -47, 26, -41, 26);
    }

    private static void spoke(SceneBuilder scene, Style style, double bearingDeg, double from, double to) {
        scene.path(style, "", east(bearingDeg, from), north(bearingDeg, from), east(bearingDeg, to), north(bearingDeg, to));
    }

    private static void arrow(SceneBuilder scene, double bearingDeg, double from, double to) {
        spoke(scene, THICK, bearingDeg, from, to - 8);
        head(scene, bearingDeg, east(bearingDeg, to), north(bearingDeg, to));
    }

    /** Draws the head of an arrow whose tip is at a point. */
    private static void head(SceneBuilder scene, double bearingDeg, double x, double y) {
        double backX = x - east(bearingDeg, 11);
        double backY = y - north(bearingDeg, 11);
        double sideX = east(bearingDeg + 90, 6);
        double sideY = north(bearingDeg + 90, 6);
        scene.area(SOLID, "", x, y, backX + sideX, backY + sideY, backX - sideX, backY - sideY);
    }

    private static void circle(SceneBuilder scene, Style style, double x, double y, double radius) {
        double[] corners = new double[2 * PIECES];
        for (int i = 0; i < PIECES; i++) {
            corners[2 * i] = x + east(i * FULL_DEG / PIECES, radius);
            corners[2 * i + 1] = y + north(i * FULL_DEG / PIECES, radius);
        }
        scene.area(style, "", corners);
    }
}
