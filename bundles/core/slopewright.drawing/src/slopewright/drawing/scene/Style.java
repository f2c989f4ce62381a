package slopewright.drawing.scene;

import java.util.Objects;

/**
 * How a mark looks.
 *
 * @param line    its outline or text; {@link Ink#NONE} for none
 * @param fill    its inside; {@link Ink#NONE} for none
 * @param widthMm width of the outline on paper, millimetres
 * @param dashed  whether the outline is dashed
 */
public record Style(Ink line, Ink fill, double widthMm, boolean dashed) {

    /** Refuses missing inks. */
    public Style {
        Objects.requireNonNull(line);
        Objects.requireNonNull(fill);
    }

    /** Makes a full line. */
    public static Style line(Ink ink, double widthMm) {
        return new Style(ink, Ink.NONE, widthMm, false);
    }

    /** Makes a dashed line. */
    public static Style dashed(Ink ink, double widthMm) {
        return new Style(ink, Ink.NONE, widthMm, true);
    }

    /** Makes a filled area without an outline. */
    public static Style fill(Ink ink) {
        return new Style(Ink.NONE, ink, 0, false);
    }

    /** Makes a filled area with an outline. */
    public static Style area(Ink line, Ink fill, double widthMm) {
        return new Style(line, fill, widthMm, false);
    }
}
