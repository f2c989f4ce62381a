package slopewright.drawing.internal.layout;

import java.util.ArrayList;
import java.util.List;

import slopewright.drawing.scene.Frame;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.LegendEntry;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.PaperArea;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;

/** Collects the marks of a scene and finds room for its callouts. */
public final class SceneBuilder {

    private final List<Mark> marks = new ArrayList<>();
    private final List<Callout> callouts = new ArrayList<>();
    private final PaperArea area;

    /** Starts a scene for an area on paper. */
    public SceneBuilder(PaperArea area) {
        this.area = area;
    }

    /** Returns the area on paper. */
    public PaperArea paper() {
        return area;
    }

    /** A text that belongs to a place and may stand anywhere near it. */
    private record Callout(ScenePoint at, String text, double sizeMm, double firstDeg, Ink ink, String id) {
    }

    public SceneBuilder path(Style style, String id, double... xy) {
        return add(false, style, id, xy);
    }

    public SceneBuilder area(Style style, String id, double... xy) {
        return add(true, style, id, xy);
    }

    /** Adds an upright rectangle between two corners. */
    public SceneBuilder box(Style style, String id, double x1, double y1, double x2, double y2) {
        return add(true, style, id, x1, y1, x2, y1, x2, y2, x1, y2);
    }

    private SceneBuilder add(boolean closed, Style style, String id, double... xy) {
        List<ScenePoint> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new ScenePoint(xy[i], xy[i + 1]));
        }
        marks.add(new Mark.Path(points, closed, style, id));
        return this;
    }

    public SceneBuilder disc(double x, double y, double radiusMm, Style style, String id) {
        marks.add(new Mark.Disc(new ScenePoint(x, y), radiusMm, style, id));
        return this;
    }

    public SceneBuilder label(double x, double y, String text, Mark.Anchor anchor, double sizeMm, double dyMm, Ink ink, String id) {
        marks.add(new Mark.Label(new ScenePoint(x, y), text, anchor, sizeMm, dyMm, ink, id));
        return this;
    }

    /** Adds a text near a place, to the right of it where there is room. */
    public SceneBuilder callout(double x, double y, String text, double sizeMm, Ink ink, String id) {
        return callout(x, y, text, sizeMm, 0, ink, id);
    }

    /** Adds a text near a place, in a direction where there is room: degrees from the right, upward positive. */
    public SceneBuilder callout(double x, double y, String text, double sizeMm, double firstDeg, Ink ink, String id) {
        callouts.add(new Callout(new ScenePoint(x, y), text, sizeMm, firstDeg, ink, id));
        return this;
    }

    /** Makes the scene, in metres; callouts get the nearest free room that a drawing of the size has. */
    public Scene build(String title, Frame frame, double exaggeration, List<String> captions, List<LegendEntry> legend) {
        return build(title, frame, exaggeration, captions, legend, Scene.Unit.METRES);
    }

    /** Makes the scene; callouts get the nearest free room that a drawing of the size has. */
    public Scene build(String title, Frame frame, double exaggeration, List<String> captions, List<LegendEntry> legend, Scene.Unit unit) {
        marks.removeIf(mark -> mark instanceof Mark.Label label && !frame.holds(label.at()));
        CalloutPlacement free = new CalloutPlacement(frame, exaggeration, marks, area);
        for (Callout callout : callouts) {
            marks.addAll(free.place(callout.at(), callout.text(), callout.sizeMm(), callout.firstDeg(), callout.ink(), callout.id()));
        }
        return new Scene(title, frame.minX(), frame.minY(), frame.maxX(), frame.maxY(), exaggeration,
                Lettering.enlarged(marks, area.lettering()), captions, legend, unit);
    }
}
