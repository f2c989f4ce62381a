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
 */
public record Scene(String title, double minX, double minY, double maxX, double maxY, double exaggeration, List<Mark> marks,
        List<String> captions) {

    /** Copies the lists and refuses an empty frame. */
    public Scene {
        marks = List.copyOf(marks);
        captions = List.copyOf(captions);
        if (!(maxX > minX) || !(maxY > minY) || !(exaggeration > 0)) {
            throw new IllegalArgumentException("a scene needs a frame of some width and height");
        }
    }

    /** Returns width over height on paper. */
    public double aspect() {
        return (maxX - minX) / ((maxY - minY) * exaggeration);
    }
}
