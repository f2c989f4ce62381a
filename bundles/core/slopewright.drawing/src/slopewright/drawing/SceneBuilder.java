package slopewright.drawing;

import java.util.ArrayList;
import java.util.List;

/** Collects the marks of a scene. */
final class SceneBuilder {

    private final List<Mark> marks = new ArrayList<>();

    SceneBuilder path(Style style, String id, double... xy) {
        return add(false, style, id, xy);
    }

    SceneBuilder area(Style style, String id, double... xy) {
        return add(true, style, id, xy);
    }

    private SceneBuilder add(boolean closed, Style style, String id, double... xy) {
        List<ScenePoint> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new ScenePoint(xy[i], xy[i + 1]));
        }
        marks.add(new Mark.Path(points, closed, style, id));
        return this;
    }

    SceneBuilder mark(Mark mark) {
        marks.add(mark);
        return this;
    }

    SceneBuilder disc(double x, double y, double radiusMm, Style style, String id) {
        marks.add(new Mark.Disc(new ScenePoint(x, y), radiusMm, style, id));
        return this;
    }

    SceneBuilder label(double x, double y, String text, Mark.Anchor anchor, double sizeMm, double dyMm, Ink ink, String id) {
        marks.add(new Mark.Label(new ScenePoint(x, y), text, anchor, sizeMm, dyMm, ink, id));
        return this;
    }

    List<Mark> marks() {
        return marks;
    }
}
