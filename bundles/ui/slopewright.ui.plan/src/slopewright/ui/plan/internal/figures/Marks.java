package slopewright.ui.plan.internal.figures;

import java.util.ArrayList;
import java.util.List;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.siting.site.PlanAxis;
import slopewright.ui.plan.internal.places.PlanPlaces;

/** Collects marks of one element. */
public final class Marks {

    private final String id;
    private final List<Mark> marks = new ArrayList<>();

    /** Starts the marks of an element. */
    public Marks(String elementId) {
        this.id = elementId == null ? "" : elementId;
    }

    /** Adds an open line. */
    public Marks line(Style style, List<ScenePoint> points) {
        if (points.size() >= 2) {
            marks.add(new Mark.Path(points, false, style, id));
        }
        return this;
    }

    /** Adds a closed area. */
    public Marks area(Style style, List<ScenePoint> points) {
        if (points.size() >= 3) {
            marks.add(new Mark.Path(points, true, style, id));
        }
        return this;
    }

    /** Adds a rectangle in a frame. */
    public Marks box(Style style, PlanAxis axis, double fromAlongM, double fromRightM, double toAlongM, double toRightM) {
        return area(style, List.of(PlanPlaces.point(axis, fromAlongM, fromRightM), PlanPlaces.point(axis, toAlongM, fromRightM),
                PlanPlaces.point(axis, toAlongM, toRightM), PlanPlaces.point(axis, fromAlongM, toRightM)));
    }

    /** Adds an open line in a frame: along, right, along, right and so on. */
    public Marks stroke(Style style, PlanAxis axis, double... alongRight) {
        List<ScenePoint> points = new ArrayList<>();
        for (int i = 0; i < alongRight.length; i += 2) {
            points.add(PlanPlaces.point(axis, alongRight[i], alongRight[i + 1]));
        }
        return line(style, points);
    }

    /** Adds a disc of a radius in millimetres. */
    public Marks disc(ScenePoint centre, double radiusMm, Style style) {
        marks.add(new Mark.Disc(centre, radiusMm, style, id));
        return this;
    }

    /** Adds a text that starts, is centred or ends at a place. */
    public Marks text(ScenePoint at, String text, Mark.Anchor anchor, double sizeMm, double upMm, Ink ink) {
        if (!text.isBlank()) {
            marks.add(new Mark.Label(at, text, anchor, sizeMm, upMm, ink, id));
        }
        return this;
    }

    /** Adds a mark that was made elsewhere. */
    public Marks add(Mark mark) {
        marks.add(mark);
        return this;
    }

    /** Returns the marks, the lowest first. */
    public List<Mark> list() {
        return List.copyOf(marks);
    }
}
