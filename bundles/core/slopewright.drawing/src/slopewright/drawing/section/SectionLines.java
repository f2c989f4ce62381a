package slopewright.drawing.section;

import java.util.ArrayList;
import java.util.List;

import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;

/** Lines and symbols of a window; what lies outside of it is left out. */
final class SectionLines {

    private static final double BEYOND_MM = 4;

    private final SectionWindow window;
    private final List<Mark> marks;

    SectionLines(SectionWindow window, List<Mark> marks) {
        this.window = window;
        this.marks = marks;
    }

    SectionWindow window() {
        return window;
    }

    /** Returns the height of a ray from a lens at a place, metres. */
    static double heightM(FramePoint lens, double angleDeg, double alongM) {
        return lens.heightM() + (lens.alongM() - alongM) * Angles.tanDeg(angleDeg);
    }

    /** Returns where a ray that comes from the approach side is first seen, metres in the landing direction. */
    static double seenFromM(SectionWindow window, FramePoint lens, double angleDeg) {
        double slope = Angles.tanDeg(angleDeg);
        double edge = slope > 0 ? window.maxHeightM() : window.minHeightM();
        double enters = Math.abs(slope) < 1e-9 ? window.minAlongM() : lens.alongM() - (edge - lens.heightM()) / slope;
        return Math.max(window.minAlongM(), Math.min(enters, lens.alongM()));
    }

    /** Draws a ray from a lens toward the approach, as far as it can be seen. */
    void ray(Style style, String id, FramePoint lens, double angleDeg) {
        double from = seenFromM(window, lens, angleDeg);
        if (from < lens.alongM()) {
            line(style, id, from, heightM(lens, angleDeg, from), lens.alongM(), lens.heightM());
        }
    }

    /** Draws a straight line, cut to the window and a little more. */
    void line(Style style, String id, double x1, double y1, double x2, double y2) {
        double sideM = BEYOND_MM / window.mmAlong();
        double upM = BEYOND_MM / window.mmUp();
        double[] range = {0, 1};
        boolean seen = cut(range, x1, x2, window.minAlongM() - sideM, window.maxAlongM() + sideM)
                && cut(range, y1, y2, window.minHeightM() - upM, window.maxHeightM() + upM);
        if (seen) {
            marks.add(new Mark.Path(List.of(between(x1, y1, x2, y2, range[0]), between(x1, y1, x2, y2, range[1])), false, style, id));
        }
    }

    private static ScenePoint between(double x1, double y1, double x2, double y2, double share) {
        return new ScenePoint(x1 + (x2 - x1) * share, y1 + (y2 - y1) * share);
    }

    /** Narrows the part of a line to where one coordinate lies between two values; returns whether anything is left. */
    private static boolean cut(double[] range, double from, double to, double least, double most) {
        double way = to - from;
        if (Math.abs(way) < 1e-12) {
            return from >= least && from <= most;
        }
        double atLeast = (least - from) / way;
        double atMost = (most - from) / way;
        range[0] = Math.max(range[0], Math.min(atLeast, atMost));
        range[1] = Math.min(range[1], Math.max(atLeast, atMost));
        return range[0] < range[1];
    }

    /** Draws a line of several pieces. */
    void pieces(Style style, String id, double... xy) {
        for (int i = 0; i + 3 < xy.length; i += 2) {
            line(style, id, xy[i], xy[i + 1], xy[i + 2], xy[i + 3]);
        }
    }

    /** Draws an upright line from a place, millimetres. */
    void upright(Style style, String id, double x, double y, double upMm) {
        line(style, id, x, y, x, y + upMm / window.mmUp());
    }

    /** Draws a level line on both sides of a place, millimetres. */
    void across(Style style, String id, double x, double y, double eachSideMm) {
        double side = eachSideMm / window.mmAlong();
        line(style, id, x - side, y, x + side, y);
    }

    /** Draws a closed line by millimetres around a place. */
    void symbol(Style style, String id, double x, double y, double... offsetsMm) {
        double[] xy = new double[offsetsMm.length];
        for (int i = 0; i < xy.length; i += 2) {
            xy[i] = x + offsetsMm[i] / window.mmAlong();
            xy[i + 1] = y + offsetsMm[i + 1] / window.mmUp();
        }
        if (window.holds(x, y)) {
            area(style, id, xy);
        }
    }

    /** Fills an area, whatever of it can be seen. */
    void area(Style style, String id, double... xy) {
        List<ScenePoint> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new ScenePoint(xy[i], xy[i + 1]));
        }
        marks.add(new Mark.Path(points, true, style, id));
    }

    /** Draws one line through many places, all of them seen. */
    void path(Style style, String id, List<ScenePoint> points) {
        marks.add(new Mark.Path(points, false, style, id));
    }

    /** Draws a cross, millimetres to each side of a place. */
    void cross(Style style, String id, double x, double y, double eachSideMm) {
        double side = eachSideMm / window.mmAlong();
        double up = eachSideMm / window.mmUp();
        line(style, id, x - side, y - up, x + side, y + up);
        line(style, id, x - side, y + up, x + side, y - up);
    }

    /** Returns what was drawn so far. */
    List<Mark> marks() {
        return marks;
    }

    /** Draws a disc. */
    void disc(double x, double y, double radiusMm, Style style, String id) {
        if (window.holds(x, y)) {
            marks.add(new Mark.Disc(new ScenePoint(x, y), radiusMm, style, id));
        }
    }
}
