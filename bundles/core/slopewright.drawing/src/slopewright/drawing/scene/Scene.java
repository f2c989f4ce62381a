package slopewright.drawing.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Printable;
import slopewright.messages.Words;

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
 * @param unit         what a scene unit is
 */
public record Scene(String title, double minX, double minY, double maxX, double maxY, double exaggeration, List<Mark> marks,
        List<String> captions, List<LegendEntry> legend, Unit unit) {

    private static final double MM_PER_M = 1000;

    /** What a scene unit is. */
    public enum Unit {
        /** A metre; the drawing has a scale. */
        METRES,
        /** A degree of view, or a step of a chart; the drawing has none. */
        NO_LENGTH
    }

    /** Copies the lists and refuses an empty frame. */
    public Scene {
        marks = List.copyOf(marks);
        captions = captions.stream().map(Printable::of).toList();
        title = Printable.of(title);
        legend = List.copyOf(legend);
        Objects.requireNonNull(unit);
        if (!(maxX > minX) || !(maxY > minY) || !(exaggeration > 0)) {
            throw new IllegalArgumentException("a scene needs a frame of some width and height");
        }
    }

    /** Makes a scene in metres. */
    public Scene(String title, double minX, double minY, double maxX, double maxY, double exaggeration, List<Mark> marks,
            List<String> captions, List<LegendEntry> legend) {
        this(title, minX, minY, maxX, maxY, exaggeration, marks, captions, legend, Unit.METRES);
    }

    /** Makes a scene in metres without a key. */
    public Scene(String title, double minX, double minY, double maxX, double maxY, double exaggeration, List<Mark> marks,
            List<String> captions) {
        this(title, minX, minY, maxX, maxY, exaggeration, marks, captions, List.of());
    }

    /** Returns the scene with another caption. */
    public Scene with(String caption) {
        List<String> more = new ArrayList<>(captions);
        more.add(caption);
        return new Scene(title, minX, minY, maxX, maxY, exaggeration, marks, more, legend, unit);
    }

    /**
     * Returns the scale on paper in words, such as {@code 1:500} or {@code 1:5000, heights 1:500}.
     *
     * @param widthMm  width of the scene on paper
     * @param language in which it is said
     * @return the scale
     */
    public String scale(double widthMm, MessageRenderer language) {
        if (unit != Unit.METRES) {
            return language.render(Message.of("drawing.not-to-scale"));
        }
        double across = (maxX - minX) / widthMm * MM_PER_M;
        return exaggeration == 1 ? language.render(Message.of("drawing.scale", Words.number(across)))
                : language.render(Message.of("drawing.scales", Words.number(across), Words.number(across / exaggeration)));
    }

    /** Returns width over height on paper. */
    public double aspect() {
        return (maxX - minX) / ((maxY - minY) * exaggeration);
    }
}
