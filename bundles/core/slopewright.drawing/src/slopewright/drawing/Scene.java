package slopewright.drawing;

import java.util.List;

/**
 * A drawing before it is painted. Scene units are metres, or degrees in a pilot's view; y points up.
 *
 * @param title        what it shows
 * @param minX         left edge, scene units
 * @param minY         lower edge, scene units
 * @param maxX         right edge, scene units
 * @param maxY         upper edge, scene units
 * @param exaggeration how much more a scene unit upward takes on paper than one to the right
 * @param marks        what is drawn, the lowest first
 * @param captions     lines of text under the drawing
 * @param legend       the key to the marks, under the captions
 */
public record Scene(String title, double minX, double minY, double maxX, double maxY, double exaggeration, List<Mark> marks,
        List<String> captions, List<LegendEntry> legend) {

    /** Copies the lists and refuses an empty frame. */
    public Scene {
        marks = List.copyOf(marks);
        captions = List.copyOf(captions);
        legend = List.copyOf(legend);
        if (!(maxX > minX) || !(maxY > minY) || !(exaggeration > 0)) {
            throw new IllegalArgumentException("a scene needs a frame of some width and height");
        }
    }

    /** Makes a scene without a key. */
    public Scene(String title, double minX, double minY, double maxX, double maxY, double exaggeration, List<Mark> marks,
            List<String> captions) {
        this(title, minX, minY, maxX, maxY, exaggeration, marks, captions, List.of());
    }

    /** Returns width over height on paper. */
    public double aspect() {
        return (maxX - minX) / ((maxY - minY) * exaggeration);
    }
}
