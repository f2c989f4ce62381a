package slopewright.drawing.internal.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

import slopewright.drawing.scene.Frame;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.ScenePoint;

/** Cuts lines and areas at the frame of a scene. */
public final class FrameCut {

    private final List<Side> sides;

    /** A half plane: inside where the measure is not negative. */
    private record Side(ToDoubleFunction<ScenePoint> measure) {

        double of(ScenePoint point) {
            return measure.applyAsDouble(point);
        }

        ScenePoint between(ScenePoint inside, ScenePoint outside) {
            double share = of(inside) / (of(inside) - of(outside));
            return new ScenePoint(inside.x() + (outside.x() - inside.x()) * share, inside.y() + (outside.y() - inside.y()) * share);
        }
    }

    public FrameCut(Scene scene) {
        this(new Frame(scene.minX(), scene.minY(), scene.maxX(), scene.maxY()));
    }

    public FrameCut(Frame frame) {
        sides = List.of(new Side(point -> point.x() - frame.minX()), new Side(point -> frame.maxX() - point.x()),
                new Side(point -> point.y() - frame.minY()), new Side(point -> frame.maxY() - point.y()));
    }

    /** Tells whether a point lies inside. */
    public boolean holds(ScenePoint point) {
        return sides.stream().allMatch(side -> side.of(point) >= 0);
    }

    /** Returns what is inside of a line or an area; an area that is cut runs along the frame. */
    public List<Mark.Path> cut(Mark.Path path) {
        if (path.points().stream().allMatch(this::holds)) {
            return List.of(path);
        }
        List<List<ScenePoint>> pieces = path.closed() ? List.of(area(path.points())) : lines(path.points());
        return pieces.stream().filter(points -> points.size() > 1)
                .map(points -> new Mark.Path(points, path.closed(), path.style(), path.elementId())).toList();
    }

    private List<ScenePoint> area(List<ScenePoint> corners) {
        List<ScenePoint> left = corners;
        for (Side side : sides) {
            List<ScenePoint> kept = new ArrayList<>();
            for (int i = 0; i < left.size(); i++) {
                ScenePoint from = left.get(i);
                ScenePoint to = left.get((i + 1) % left.size());
                if (side.of(from) >= 0) {
                    kept.add(from);
                }
                if (side.of(from) >= 0 != side.of(to) >= 0) {
                    kept.add(side.of(from) >= 0 ? side.between(from, to) : side.between(to, from));
                }
            }
            left = kept;
        }
        return left;
    }

    private List<List<ScenePoint>> lines(List<ScenePoint> corners) {
        List<List<ScenePoint>> pieces = new ArrayList<>();
        for (int i = 1; i < corners.size(); i++) {
            List<ScenePoint> piece = segment(corners.get(i - 1), corners.get(i));
            List<ScenePoint> last = pieces.isEmpty() ? List.of() : pieces.get(pieces.size() - 1);
            if (!piece.isEmpty() && !last.isEmpty() && last.get(last.size() - 1).equals(piece.get(0))) {
                last.add(piece.get(1));
            } else if (!piece.isEmpty()) {
                pieces.add(new ArrayList<>(piece));
            }
        }
        return pieces;
    }

    private List<ScenePoint> segment(ScenePoint first, ScenePoint second) {
        ScenePoint from = first;
        ScenePoint to = second;
        for (Side side : sides) {
            if (side.of(from) < 0 && side.of(to) < 0) {
                return List.of();
            }
            from = side.of(from) < 0 ? side.between(to, from) : from;
            to = side.of(to) < 0 ? side.between(from, to) : to;
        }
        return List.of(from, to);
    }
}
