package slopewright.drawing.scene;

/** Tells how wide a text is; a window measures its own letters, paper is lettered in {@link TextWidth}'s. */
@FunctionalInterface
public interface TextMeasure {

    /**
     * Returns how wide a text is.
     *
     * @param text   the text
     * @param sizeMm height of its capitals, millimetres
     * @return millimetres
     */
    double widthMm(String text, double sizeMm);
}
