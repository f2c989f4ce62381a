package slopewright.drawing.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import slopewright.drawing.internal.layout.FrameCut;
import slopewright.drawing.internal.layout.SceneBuilder;
import slopewright.drawing.internal.obstacles.DrawnBlock;
import slopewright.drawing.internal.obstacles.DrawnObstacle;
import slopewright.drawing.internal.obstacles.DrawnObstacles;
import slopewright.drawing.internal.obstacles.ObstacleLegend;
import slopewright.drawing.internal.obstacles.ObstacleTexts;
import slopewright.drawing.internal.obstacles.OmittedObstacles;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Frame;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.LegendEntry;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.evaluation.obstacles.SurveyedShape;
import slopewright.geometry.FramePoint;
import slopewright.messages.Words;

/**
 * What stands around an aid, in a plan, as it was compared with the obstacle surface. The worst obstacles are drawn singly and named, the
 * others are dots, one where several lie on each other on paper; so are survey points, of which every place with points through the surface
 * is marked, and the governing one is named.
 */
final class PlanObstacles {

    private static final int MOST_SINGLE = 200;
    private static final int MOST_NAMED = 40;
    private static final double DOT_CELL_MM = 1.4;
    private static final double MARK_CELL_MM = 1;
    private static final double DOT_MM = 0.18;
    private static final double RING_MM = 1.6;
    private static final double CROSS_MM = 0.9;
    private static final double POINT_CROSS_MM = 0.5;

    private final DrawnAid drawn;
    private final SceneBuilder scene;
    private final Frame frame;
    private final double metresPerMm;
    private final DrawnObstacles obstacles;
    private final ObstacleTexts texts;
    private final List<DrawnObstacle> seen;

    PlanObstacles(DrawnAid drawn, SceneBuilder scene, Frame frame) {
        this.drawn = drawn;
        this.scene = scene;
        this.frame = frame;
        metresPerMm = frame.width() / scene.paper().letteredWidthMm();
        obstacles = DrawnObstacles.of(drawn);
        texts = new ObstacleTexts(drawn, obstacles);
        FrameCut cut = new FrameCut(frame);
        seen = obstacles.worstFirst().stream().filter(obstacle -> isSeen(cut, obstacle)).toList();
    }

    /** Returns the plan with what it does not show of the obstacles said under it. */
    Scene told(Scene built) {
        return OmittedObstacles.told(built, drawn, obstacles, new OmittedObstacles.Leaving(seen.stream().skip(MOST_SINGLE)
                .map(DrawnObstacle::id).collect(Collectors.toSet()), obstacle -> false, 0,
                (alongM, rightM, heightM) -> frame.holds(new ScenePoint(alongM, -rightM))));
    }

    /** Returns the key to what is seen. */
    List<LegendEntry> legend() {
        return ObstacleLegend.plan(drawn, seen, obstacles, (alongM, rightM) -> frame.holds(new ScenePoint(alongM, -rightM)));
    }

    /** A line or an area is seen where any of it lies in the frame, be all its corners outside. */
    private static boolean isSeen(FrameCut cut, DrawnObstacle obstacle) {
        List<ScenePoint> points = obstacle.shape().points().stream().map(PlanObstacles::place).toList();
        return points.stream().anyMatch(cut::holds) || obstacle.shape().kind() != SurveyedShape.Kind.POINT && !cut.cut(new Mark.Path(
                points, obstacle.shape().kind() == SurveyedShape.Kind.AREA, Style.line(Ink.OBSTACLE, 0.5), "")).isEmpty();
    }

    /** Draws everything that has a place in the frame, and returns what there is to say under it. */
    List<String> draw() {
        dots(seen.stream().skip(MOST_SINGLE).flatMap(obstacle -> obstacle.shape().points().stream()).toList(), "");
        obstacles.blocks().forEach(this::points);
        for (int i = Math.min(MOST_SINGLE, seen.size()) - 1; i >= 0; i--) {
            symbol(seen.get(i));
        }
        seen.stream().limit(MOST_NAMED).forEach(this::name);
        obstacles.blocks().forEach(this::governing);
        obstacles.topless().stream().filter(topless -> frame.holds(place(topless.place()))).forEach(this::topless);
        List<String> captions = new ArrayList<>(texts.captions());
        if (seen.size() > MOST_NAMED) {
            captions.add(drawn.say("drawing.plan.named", Words.count(seen.size()), Words.count(MOST_NAMED)));
        }
        return captions;
    }

    private static ScenePoint place(FramePoint point) {
        return new ScenePoint(point.alongM(), -point.rightM());
    }

    /** Returns one of the points for each cell of paper: the highest. */
    private List<FramePoint> thinned(List<FramePoint> points, double cellMm) {
        Map<Long, FramePoint> cells = new HashMap<>();
        for (FramePoint point : points) {
            if (frame.holds(place(point))) {
                long column = (long) Math.floor((point.alongM() - frame.minX()) / (metresPerMm * cellMm));
                long row = (long) Math.floor((-point.rightM() - frame.minY()) / (metresPerMm * cellMm));
                cells.merge(column << Integer.SIZE | row, point, (first, next) -> next.heightM() > first.heightM() ? next : first);
            }
        }
        return cells.entrySet().stream().sorted(Map.Entry.comparingByKey()).map(Map.Entry::getValue).toList();
    }

    private void dots(List<FramePoint> points, String id) {
        for (FramePoint point : thinned(points, DOT_CELL_MM)) {
            scene.disc(point.alongM(), -point.rightM(), DOT_MM, Style.fill(Ink.OBSTACLE), id);
        }
    }

    private List<FramePoint> inFrame(DrawnBlock block) {
        double[] along = block.places().alongM();
        double[] right = block.places().rightM();
        double[] height = block.places().heightM();
        List<FramePoint> inFrame = new ArrayList<>();
        for (int i = 0; i < along.length; i++) {
            if (along[i] >= frame.minX() && along[i] <= frame.maxX() && -right[i] >= frame.minY() && -right[i] <= frame.maxY()) {
                inFrame.add(new FramePoint(along[i], right[i], height[i]));
            }
        }
        return inFrame;
    }

    private void points(DrawnBlock block) {
        dots(inFrame(block), block.id());
        for (FramePoint point : thinned(block.above(), MARK_CELL_MM)) {
            cross(place(point), POINT_CROSS_MM, Style.line(Ink.PENETRATION, 0.25), block.id());
        }
    }

    private void governing(DrawnBlock block) {
        block.compared().filter(compared -> frame.holds(place(compared.worst().point()))).ifPresent(compared -> {
            Ink ink = compared.isPenetrating() ? Ink.PENETRATION : Ink.OBSTACLE;
            ScenePoint at = place(compared.worst().point());
            cross(at, compared.isPenetrating() ? CROSS_MM : POINT_CROSS_MM, Style.line(ink, 0.4), block.id());
            scene.disc(at.x(), at.y(), RING_MM, Style.line(ink, 0.25), block.id());
            scene.callout(at.x(), at.y(), texts.governingPoint(block, compared), PlanGround.LABEL_MM, ink, block.id());
        });
    }

    private void cross(ScenePoint at, double armMm, Style style, String id) {
        double arm = armMm * metresPerMm;
        scene.path(style, id, at.x() - arm, at.y() - arm, at.x() + arm, at.y() + arm);
        scene.path(style, id, at.x() - arm, at.y() + arm, at.x() + arm, at.y() - arm);
    }

    private void symbol(DrawnObstacle obstacle) {
        Ink ink = obstacle.isThrough() ? Ink.PENETRATION : Ink.OBSTACLE;
        Ink fill = obstacle.isInside() && !obstacle.isThrough() ? ink : Ink.PAPER;
        SurveyedShape shape = obstacle.shape();
        double[] xy = new double[shape.points().size() * 2];
        for (int i = 0; i < shape.points().size(); i++) {
            xy[2 * i] = shape.points().get(i).alongM();
            xy[2 * i + 1] = -shape.points().get(i).rightM();
        }
        ScenePoint middle = middle(obstacle);
        switch (shape.kind()) {
            case AREA -> scene.area(Style.area(ink, fill, 0.2), obstacle.id(), xy);
            case LINE -> scene.path(Style.line(ink, 0.5), obstacle.id(), xy);
            case POINT -> scene.disc(middle.x(), middle.y(), 0.8, Style.area(ink, fill, 0.25), obstacle.id());
        }
        if (obstacle.isThrough()) {
            cross(place(obstacle.compared().orElseThrow().worst().point()), CROSS_MM, Style.line(ink, 0.5), obstacle.id());
        }
        if (obstacles.isGoverning(obstacle.compared())) {
            ScenePoint worst = place(obstacle.compared().orElseThrow().worst().point());
            scene.disc(worst.x(), worst.y(), RING_MM, Style.line(ink, 0.25), obstacle.id());
        }
    }

    private static ScenePoint middle(DrawnObstacle obstacle) {
        List<FramePoint> points = obstacle.shape().points();
        return new ScenePoint(points.stream().mapToDouble(FramePoint::alongM).average().orElseThrow(),
                -points.stream().mapToDouble(FramePoint::rightM).average().orElseThrow());
    }

    private void name(DrawnObstacle obstacle) {
        ScenePoint middle = middle(obstacle);
        scene.callout(middle.x(), middle.y(), texts.plan(obstacle), PlanGround.LABEL_MM, obstacle.isThrough() ? Ink.PENETRATION
                : Ink.OBSTACLE, obstacle.id());
    }

    /** Draws an obstacle without a top as an empty dashed square: nobody knows what it does to the surface. */
    private void topless(DrawnObstacles.Topless topless) {
        ScenePoint at = place(topless.place());
        double half = metresPerMm;
        scene.box(Style.dashed(Ink.OBSTACLE, 0.25), topless.id(), at.x() - half, at.y() - half, at.x() + half, at.y() + half);
        scene.callout(at.x(), at.y(), texts.topless(topless), PlanGround.LABEL_MM, Ink.OBSTACLE, topless.id());
    }
}
