package slopewright.drawing.scene;

import java.util.List;
import java.util.Objects;

import slopewright.messages.Printable;

/** One thing that is drawn. */
public sealed interface Mark permits Mark.Path, Mark.Disc, Mark.Label {

    /** Returns the id of the element that the mark stands for; empty where it stands for none. */
    String elementId();

    /**
     * A line of straight pieces, or an area.
     *
     * @param points    its corners
     * @param closed    whether the last corner is joined to the first
     * @param style     how it looks
     * @param elementId id of the element; empty for none
     */
    record Path(List<ScenePoint> points, boolean closed, Style style, String elementId) implements Mark {

        /** Copies the corners. */
        public Path {
            points = List.copyOf(points);
            Objects.requireNonNull(style);
        }
    }

    /**
     * A disc of the same size on every paper.
     *
     * @param centre    its centre
     * @param radiusMm  radius on paper, millimetres
     * @param style     how it looks
     * @param elementId id of the element; empty for none
     */
    record Disc(ScenePoint centre, double radiusMm, Style style, String elementId) implements Mark {

        /** Refuses missing parts. */
        public Disc {
            Objects.requireNonNull(centre);
            Objects.requireNonNull(style);
        }
    }

    /**
     * A line of text of the same size on every paper.
     *
     * @param at        the place that the anchor lies on
     * @param text      the text
     * @param anchor    which side of the text lies there
     * @param sizeMm    height of capitals on paper, millimetres
     * @param dyMm      shift upward on paper, millimetres
     * @param ink       its colour
     * @param elementId id of the element; empty for none
     */
    record Label(ScenePoint at, String text, Anchor anchor, double sizeMm, double dyMm, Ink ink, String elementId) implements Mark {

        /** Refuses missing parts; takes out of the text what would steer it. */
        public Label {
            Objects.requireNonNull(at);
            text = Printable.of(text);
            Objects.requireNonNull(anchor);
            Objects.requireNonNull(ink);
        }
    }

    /** Which side of a text lies on its place. */
    enum Anchor {
        /** Its left end. */
        START,
        /** Its middle. */
        MIDDLE,
        /** Its right end. */
        END
    }
}
