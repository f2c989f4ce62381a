package slopewright.drawing.scene;

import java.util.List;
import java.util.Objects;

/**
 * One line of the key to a drawing.
 *
 * @param text   what the mark stands for
 * @param style  how it looks
 * @param symbol its shape
 */
public record LegendEntry(String text, Style style, Symbol symbol) {

    /** The shape of a mark in a key. */
    public enum Symbol {
        /** A piece of a line. */
        LINE,
        /** A piece of an area. */
        AREA,
        /** A disc. */
        DISC,
        /** Three small discs. */
        DOTS,
        /** A cross of two strokes. */
        CROSS,
        /** A disc with a cross of two strokes in it. */
        CROSSED_DISC
    }

    /** Refuses missing parts. */
    public LegendEntry {
        Objects.requireNonNull(text);
        Objects.requireNonNull(style);
        Objects.requireNonNull(symbol);
    }

    /** Makes the entry of a line. */
    public static LegendEntry line(String text, Style style) {
        return new LegendEntry(text, style, Symbol.LINE);
    }

    /** Makes the entry of an area. */
    public static LegendEntry area(String text, Style style) {
        return new LegendEntry(text, style, Symbol.AREA);
    }

    /** Makes the entry of a disc. */
    public static LegendEntry disc(String text, Style style) {
        return new LegendEntry(text, style, Symbol.DISC);
    }

    /** Makes the entry of dots. */
    public static LegendEntry dots(String text, Style style) {
        return new LegendEntry(text, style, Symbol.DOTS);
    }

    /** Makes the entry of a cross. */
    public static LegendEntry cross(String text, Style style) {
        return new LegendEntry(text, style, Symbol.CROSS);
    }

    /** Makes the entry of a disc with a cross. */
    public static LegendEntry crossedDisc(String text, Style style) {
        return new LegendEntry(text, style, Symbol.CROSSED_DISC);
    }

    /**
     * Returns the marks of the entry on paper, y down.
     *
     * @param x       left end of the symbol, millimetres
     * @param middleY its middle, millimetres
     * @param widthMm how wide a line or area is
     * @param size    how much larger than usual the symbol is
     */
    public List<Mark> marks(double x, double middleY, double widthMm, double size) {
        double middle = x + widthMm / 2;
        double arm = 0.9 * size;
        List<Mark> cross = List.of(line(x + widthMm / 2 - arm, middleY - arm, middle + arm, middleY + arm),
                line(middle - arm, middleY + arm, middle + arm, middleY - arm));
        return switch (symbol) {
            case LINE -> List.of(line(x, middleY, x + widthMm, middleY));
            case AREA -> List.of(new Mark.Path(List.of(new ScenePoint(x, middleY - 1.1 * size), new ScenePoint(x + widthMm, middleY - 1.1
                    * size), new ScenePoint(x + widthMm, middleY + 1.1 * size), new ScenePoint(x, middleY + 1.1 * size)), true, style, ""));
            case DISC -> List.of(new Mark.Disc(new ScenePoint(middle, middleY), size, style, ""));
            case DOTS -> List.of(-1.2, 0.0, 1.2).stream().<Mark>map(beside -> new Mark.Disc(new ScenePoint(middle + beside * size, middleY),
                    0.2 * size, style, "")).toList();
            case CROSS -> cross;
            case CROSSED_DISC -> List.of(new Mark.Disc(new ScenePoint(middle, middleY), 0.8 * size, style, ""), cross.get(0), cross.get(1));
        };
    }

    private Mark line(double x1, double y1, double x2, double y2) {
        return new Mark.Path(List.of(new ScenePoint(x1, y1), new ScenePoint(x2, y2)), false, style, "");
    }
}
