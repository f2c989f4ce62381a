package slopewright.evaluation.tolerance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import slopewright.evaluation.obstacles.ObstacleField;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.Surroundings;
import slopewright.evaluation.obstacles.SurveyedShape;
import slopewright.geometry.FramePoint;
import slopewright.geometry.Penetration;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.Identified;

/** Picks what may govern the margin while a surface moves a little: obstacles and survey points, those of the least margin. */
final class StudiedShapes {

    /** Most obstacles that take part, and most points of one survey block. */
    static final int MOST = 40;
    private static final int MOST_POINTS = 8;

    /**
     * An obstacle or a survey point with its accuracy, which counts on the safe side.
     *
     * @param name  its name
     * @param shape its shape in the frame
     */
    record Shape(String name, SurveyedShape shape) {

        Optional<Penetration> compare(ProtectionSurface surface, double topM, double placeM) {
            if (topM == 0 && placeM == 0) {
                return shape.compare(surface);
            }
            List<FramePoint> moved = shape.points().stream()
                    .map(point -> new FramePoint(point.alongM() + placeM, point.rightM(), point.heightM() + topM)).toList();
            return new SurveyedShape(shape.kind(), moved, shape.horizontalAccuracyM(), shape.verticalAccuracyM()).compare(surface);
        }
    }

    private StudiedShapes() {
    }

    /**
     * Picks shapes.
     *
     * @param surroundings everything that stands there
     * @param surfaces     the surface as it stands, and at the ends of what it may move
     * @return the shapes of least margin against any of them
     */
    static List<Shape> of(Surroundings surroundings, List<ProtectionSurface> surfaces) {
        Map<Identified, SurveyedShape> shapes = new HashMap<>();
        for (ObstacleField.Placed placed : surroundings.obstacles().placed()) {
            shapes.put(placed.obstacle(), placed.shape());
        }
        Map<Object, Shape> picked = new LinkedHashMap<>();
        for (ProtectionSurface surface : surfaces) {
            SurfaceComparison compared = surroundings.compare(surface);
            compared.inside().stream().filter(hit -> shapes.containsKey(hit.element())).sorted(Comparator.comparingDouble(
                    hit -> hit.marginM())).limit(MOST).forEach(hit -> picked.putIfAbsent(hit.element(),
                            new Shape(hit.label(), shapes.get(hit.element()))));
            for (Surroundings.Block block : surroundings.blocks()) {
                for (int index : block.points().leastMargins(surface, MOST_POINTS)) {
                    picked.putIfAbsent(List.of(block.block().getId() == null ? "" : block.block().getId(), index),
                            new Shape(block.label(index), block.points().shape(index)));
                }
            }
        }
        return new ArrayList<>(picked.values());
    }
}
