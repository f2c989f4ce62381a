package slopewright.drawing.scene;

import java.util.ArrayList;
import java.util.List;

/**
 * How wide a line of text is in the sans-serif face that drawings are lettered in. The widths are those of the base font Helvetica,
 * whose metrics the usual substitutes share; characters that are not listed count as a digit.
 */
public final class TextWidth {

    /** Height of capitals over the size of the type. */
    public static final double CAPITAL = 0.70;

    private static final int FIRST = ' ';
    private static final int DIGIT = 556;
    private static final int[] THOUSANDTHS = {278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556,
            556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667,
            556, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556,
            556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334,
            584};

    private TextWidth() {
    }

    /**
     * Returns the width of a line.
     *
     * @param text   the text
     * @param sizeMm height of its capitals, millimetres
     * @return millimetres
     */
    public static double mm(String text, double sizeMm) {
        double sum = text.chars().mapToDouble(TextWidth::thousandths).sum();
        return sum / 1000 * sizeMm / CAPITAL;
    }

    private static double thousandths(int letter) {
        int index = letter - FIRST;
        return index >= 0 && index < THOUSANDTHS.length ? THOUSANDTHS[index] : DIGIT;
    }

    /** Returns a text, or as much of it as fits a width in millimetres with three dots after it. */
    public static String cut(String text, double sizeMm, double widthMm) {
        if (mm(text, sizeMm) <= widthMm) {
            return text;
        }
        int length = text.length();
        while (length > 0 && mm(text.substring(0, length) + "...", sizeMm) > widthMm) {
            length--;
        }
        return text.substring(0, length) + "...";
    }

    /**
     * Breaks a text into lines between its words.
     *
     * @param text    the text
     * @param sizeMm  height of its capitals, millimetres
     * @param widthMm width of a line, millimetres; a single longer word keeps its line
     * @return at least one line
     */
    public static List<String> wrap(String text, double sizeMm, double widthMm) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ")) {
            if (line.length() > 0 && mm(line + " " + word, sizeMm) > widthMm) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
