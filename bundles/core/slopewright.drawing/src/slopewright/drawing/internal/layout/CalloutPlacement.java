package slopewright.drawing.internal.layout;

import java.util.ArrayList;
import java.util.List;

import slopewright.drawing.scene.Frame;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.Mark.Anchor;
import slopewright.drawing.scene.PaperArea;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.drawing.scene.TextWidth;

/** Finds room for texts beside their places, on a drawing of the usual size, so that no text covers another. */
public final class CalloutPlacement {

    /** The height that a drawing without one of its own is lettered for. */
    private static final double HEIGHT_MM = 100;

    private static final double[] NEAR_MM = {1.6, 2.4, 3};
    private static final int NEAR_DIRECTIONS = 2;
    private static final double[] AWAY_MM = {1.6, 2.8, 4.4, 7, 10, 14, 18, 23, 29, 36};
    private static final double[] DIRECTIONS_DEG = {0, 180, 50, 130, -50, -130, 90, -90, 25, 155, -25, -155};
    private static final double LEADER_MM = 3.2;
    private static final double CLEAR_MM = 0.5;
    /** A text on another counts more than a line behind it, and that more than a long leader. */
    private static final double COVERED_COST = 10;
    private static final double FAR_COST = 0.4;
    private static final double FAR_MM = 3;
    /** A closed mark that is smaller is a symbol that no text may cover. */
    private static final double SYMBOL_MM = 14;

    private final Frame frame;
    private final double xScale;
    private final double yScale;
    private final List<Box> taken = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();

    /** A rectangle on paper, y up. */
    private record Box(double left, double low, double right, double high) {

        double overlap(Box other) {
            double wide = Math.min(right, other.right) - Math.max(left, other.left);
            double tall = Math.min(high, other.high) - Math.max(low, other.low);
            return wide > 0 && tall > 0 ? wide * tall : 0;
        }
    }

    /** A piece of a line on paper. */
    private record Line(double x1, double y1, double x2, double y2) {

        /** Returns how much of it lies in a box, millimetres. */
        double inside(Box box) {
            double from = Math.max(entry(x1, x2, box.left, box.right), entry(y1, y2, box.low, box.high));
            double to = Math.min(exit(x1, x2, box.left, box.right), exit(y1, y2, box.low, box.high));
            return Math.max(0, Math.min(1, to) - Math.max(0, from)) * Math.hypot(x2 - x1, y2 - y1);
        }

        private static double entry(double from, double to, double low, double high) {
            return from == to ? from >= low && from <= high ? 0 : 2 : Math.min((low - from) / (to - from), (high - from) / (to - from));
        }

        private static double exit(double from, double to, double low, double high) {
            return from == to ? 1 : Math.max((low - from) / (to - from), (high - from) / (to - from));
        }
    }

    public CalloutPlacement(Frame frame, double exaggeration, List<Mark> marks, PaperArea room) {
        this.frame = frame;
        double wide = room.letteredWidthMm() / frame.width();
        xScale = room.isFilled() ? wide : Math.min(wide, HEIGHT_MM / (frame.height() * exaggeration));
        yScale = xScale * exaggeration;
        for (Mark mark : marks) {
            if (mark instanceof Mark.Label label) {
                taken.add(box(x(label.at()), y(label.at()) + label.dyMm(), label.text(), label.sizeMm(), label.anchor()));
            } else if (mark instanceof Mark.Disc disc) {
                double radius = disc.radiusMm();
                taken.add(new Box(x(disc.centre()) - radius, y(disc.centre()) - radius, x(disc.centre()) + radius, y(disc.centre())
                        + radius));
            } else if (mark instanceof Mark.Path path) {
                takePath(path);
            }
        }
    }

    private void takePath(Mark.Path path) {
        if (path.closed()) {
            takeSymbol(path.points());
        }
        if (path.style().line() != Ink.NONE) {
            List<ScenePoint> points = path.points();
            for (int i = path.closed() ? 0 : 1; i < points.size(); i++) {
                ScenePoint from = points.get(i == 0 ? points.size() - 1 : i - 1);
                lines.add(new Line(x(from), y(from), x(points.get(i)), y(points.get(i))));
            }
        }
    }

    private void takeSymbol(List<ScenePoint> points) {
        double left = points.stream().mapToDouble(this::x).min().orElse(0);
        double right = points.stream().mapToDouble(this::x).max().orElse(0);
        double low = points.stream().mapToDouble(this::y).min().orElse(0);
        double high = points.stream().mapToDouble(this::y).max().orElse(0);
        if (right - left < SYMBOL_MM && high - low < SYMBOL_MM) {
            taken.add(new Box(left - CLEAR_MM, low, right + CLEAR_MM, high));
        }
    }

    private double x(ScenePoint point) {
        return (point.x() - frame.minX()) * xScale;
    }

    private double y(ScenePoint point) {
        return (point.y() - frame.minY()) * yScale;
    }

    private static Box box(double x, double y, String text, double sizeMm, Anchor anchor) {
        double width = TextWidth.mm(text, sizeMm);
        double left = anchor == Anchor.START ? x : anchor == Anchor.MIDDLE ? x - width / 2 : x - width;
        return new Box(left - CLEAR_MM, y - sizeMm * 0.3 - CLEAR_MM, left + width + CLEAR_MM, y + sizeMm + CLEAR_MM);
    }

    /** Returns the text where there is room, with a leader where that is not close by; nothing for a place outside the frame. */
    public List<Mark> place(ScenePoint at, String text, double sizeMm, double firstDeg, Ink ink, String id) {
        if (!frame.holds(at)) {
            return List.of();
        }
        Candidate best = search(at, text, sizeMm, firstDeg, NEAR_MM, NEAR_DIRECTIONS);
        if (best.cost() > 0) {
            Candidate further = search(at, text, sizeMm, firstDeg, AWAY_MM, DIRECTIONS_DEG.length);
            best = further.cost() < best.cost() ? further : best;
        }
        taken.add(best.box());
        ScenePoint foot = scene(best.x(), best.y());
        Mark label = new Mark.Label(foot, text, best.anchor(), sizeMm, 0, ink, id);
        if (best.away() < LEADER_MM) {
            return List.of(label);
        }
        double end = best.anchor() == Anchor.START ? best.x() - CLEAR_MM : best.anchor() == Anchor.END ? best.x() + CLEAR_MM : best.x();
        boolean above = best.y() > y(at);
        double level = best.anchor() == Anchor.MIDDLE ? above ? best.box().low() : best.box().high() : best.y() + sizeMm / 2;
        return List.of(new Mark.Path(List.of(at, scene(end, level)), false, Style.line(Ink.DIMENSION, 0.1), ""), label);
    }

    /** Returns the first free place, or the one that costs least: the nearest first, then in the order of the directions. */
    private Candidate search(ScenePoint at, String text, double sizeMm, double firstDeg, double[] awayMm, int directions) {
        Candidate best = candidate(at, text, sizeMm, awayMm[0], firstDeg + DIRECTIONS_DEG[0]);
        for (double away : awayMm) {
            for (int i = 0; i < directions && best.cost() > 0; i++) {
                Candidate candidate = candidate(at, text, sizeMm, away, firstDeg + DIRECTIONS_DEG[i]);
                best = candidate.cost() < best.cost() ? candidate : best;
            }
        }
        return best;
    }

    /** A place for a text: its foot on paper, and how much of the text would lie on others or outside. */
    private record Candidate(double x, double y, Anchor anchor, Box box, double away, double cost) {
    }

    private Candidate candidate(ScenePoint at, String text, double sizeMm, double away, double direction) {
        double dx = Math.cos(Math.toRadians(direction)) * away;
        double dy = Math.sin(Math.toRadians(direction)) * away;
        Anchor anchor = Math.abs(dx) < away * 0.3 ? Anchor.MIDDLE : dx > 0 ? Anchor.START : Anchor.END;
        double x = x(at) + dx;
        double y = y(at) + dy - sizeMm * (anchor == Anchor.MIDDLE ? dy > 0 ? 0 : 1 : 0.5);
        Box box = box(x, y, text, sizeMm, anchor);
        double cost = taken.stream().mapToDouble(box::overlap).sum() * COVERED_COST
                + lines.stream().mapToDouble(line -> line.inside(box)).sum() + Math.max(0, away - FAR_MM) * FAR_COST;
        double out = Math.max(0, -box.left()) + Math.max(0, box.right() - frame.width() * xScale) + Math.max(0, -box.low())
                + Math.max(0, box.high() - frame.height() * yScale);
        return new Candidate(x, y, anchor, box, away, cost + out * 60);
    }

    private ScenePoint scene(double xMm, double yMm) {
        return new ScenePoint(frame.minX() + xMm / xScale, frame.minY() + yMm / yScale);
    }
}
