package slopewright.drawing.scene;

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
        DISC
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
}
