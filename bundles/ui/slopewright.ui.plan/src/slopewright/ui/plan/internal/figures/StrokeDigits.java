package slopewright.ui.plan.internal.figures;

import java.util.Map;

import slopewright.drawing.scene.Style;
import slopewright.siting.site.PlanAxis;

/** Designators as they are painted on a runway, to be read on the approach: strokes of straight pieces, 9 m high and 3 m wide. */
final class StrokeDigits {

    private static final double HEIGHT_M = 9;
    private static final double WIDTH_M = 3;
    private static final double GAP_M = 1.5;

    /** Each stroke in numbers between 0 and 1: across from the left, up from the foot, and so on. */
    private static final Map<Character, double[][]> STROKES = Map.ofEntries(
            Map.entry('0', new double[][] {{0, 0.15, 0, 0.85, 0.3, 1, 0.7, 1, 1, 0.85, 1, 0.15, 0.7, 0, 0.3, 0, 0, 0.15}}),
            Map.entry('1', new double[][] {{0.2, 0.75, 0.6, 1, 0.6, 0}}),
            Map.entry('2', new double[][] {{0, 0.85, 0.3, 1, 0.7, 1, 1, 0.85, 1, 0.65, 0, 0, 1, 0}}),
            Map.entry('3', new double[][] {{0, 1, 1, 1, 0.5, 0.6, 1, 0.4, 1, 0.15, 0.7, 0, 0.3, 0, 0, 0.15}}),
            Map.entry('4', new double[][] {{0.8, 0, 0.8, 1, 0, 0.3, 1, 0.3}}),
            Map.entry('5', new double[][] {{1, 1, 0, 1, 0, 0.6, 0.7, 0.6, 1, 0.45, 1, 0.15, 0.7, 0, 0, 0}}),
            Map.entry('6', new double[][] {{0.8, 1, 0.2, 0.65, 0, 0.3, 0, 0.15, 0.3, 0, 0.7, 0, 1, 0.15, 1, 0.4, 0.7, 0.5, 0.1, 0.5}}),
            Map.entry('7', new double[][] {{0, 1, 1, 1, 0.35, 0}}),
            Map.entry('8', new double[][] {{0.3, 0.55, 0, 0.7, 0, 0.85, 0.3, 1, 0.7, 1, 1, 0.85, 1, 0.7, 0.7, 0.55, 0.3, 0.55, 0, 0.4, 0,
                0.15, 0.3, 0, 0.7, 0, 1, 0.15, 1, 0.4, 0.7, 0.55}}),
            Map.entry('9', new double[][] {{0.2, 0, 0.8, 0.35, 1, 0.7, 1, 0.85, 0.7, 1, 0.3, 1, 0, 0.85, 0, 0.6, 0.3, 0.5, 0.9, 0.5}}),
            Map.entry('L', new double[][] {{0, 1, 0, 0, 1, 0}}),
            Map.entry('R', new double[][] {{0, 0, 0, 1, 0.7, 1, 1, 0.85, 1, 0.65, 0.7, 0.5, 0, 0.5, 1, 0}}),
            Map.entry('C', new double[][] {{1, 0.85, 0.7, 1, 0.3, 1, 0, 0.85, 0, 0.15, 0.3, 0, 0.7, 0, 1, 0.15}}),
            Map.entry('H', new double[][] {{0, 0, 0, 1}, {1, 0, 1, 1}, {0, 0.5, 1, 0.5}}));

    private StrokeDigits() {
    }

    /** Paints a text across the centre line, its foot at a place along it. */
    static void paint(Marks marks, Style style, PlanAxis axis, String text, double alongM) {
        double right = -(text.length() * (WIDTH_M + GAP_M) - GAP_M) / 2;
        for (char sign : text.toCharArray()) {
            paint(marks, style, axis, sign, alongM, right, HEIGHT_M, WIDTH_M);
            right += WIDTH_M + GAP_M;
        }
    }

    /** Paints one sign of any size, its left foot at a place. */
    static void paint(Marks marks, Style style, PlanAxis axis, char sign, double alongM, double rightM, double heightM, double widthM) {
        for (double[] stroke : STROKES.getOrDefault(sign, new double[0][])) {
            double[] placed = new double[stroke.length];
            for (int i = 0; i < stroke.length; i += 2) {
                placed[i] = alongM + stroke[i + 1] * heightM;
                placed[i + 1] = rightM + stroke[i] * widthM;
            }
            marks.stroke(style, axis, placed);
        }
    }
}
