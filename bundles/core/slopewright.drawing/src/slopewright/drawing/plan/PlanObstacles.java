package slopewright.drawing.plan;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import slopewright.drawing.internal.layout.SceneBuilder;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.LegendEntry;
import slopewright.drawing.scene.Style;
import slopewright.evaluation.obstacles.SurveyedShape;
import slopewright.geometry.FramePoint;
import slopewright.geometry.Penetration;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;

/** Obstacles in a plan, with what they do to the obstacle surface. */
final class PlanObstacles {

    /** The key to what this class draws. */
    static final List<LegendEntry> LEGEND = List.of(LegendEntry.disc("obstacle inside and below", Style.fill(Ink.OBSTACLE)),
            LegendEntry.disc("obstacle through the surface", Style.fill(Ink.PENETRATION)),
            LegendEntry.disc("obstacle outside", Style.area(Ink.OBSTACLE, Ink.PAPER, 0.25)));

    private final DrawnAid drawn;
    private final SceneBuilder scene;

    PlanObstacles(DrawnAid drawn, SceneBuilder scene) {
        this.drawn = drawn;
        this.scene = scene;
    }

    /** Draws all that have a place and a height. */
    void draw() {
        for (Obstacle obstacle : drawn.obstacles()) {
            try {
                draw(obstacle, SurveyedShape.of(obstacle, drawn.frame()).points());
            } catch (SitingException e) {
                // an obstacle without place or height is a finding of its own; there is nothing to draw
                continue;
            }
        }
    }

    private void draw(Obstacle obstacle, List<FramePoint> points) {
        Optional<Penetration> found = drawn.siting().surface()
                .flatMap(surface -> SurveyedShape.of(obstacle, drawn.frame()).compare(surface.geometry()));
        Ink ink = found.filter(one -> one.excessM() > 0).isPresent() ? Ink.PENETRATION : Ink.OBSTACLE;
        Ink fill = found.isEmpty() ? Ink.PAPER : ink;
        double[] xy = new double[points.size() * 2];
        double top = Double.NEGATIVE_INFINITY;
        double x = 0;
        double y = 0;
        for (int i = 0; i < points.size(); i++) {
            xy[2 * i] = points.get(i).alongM();
            xy[2 * i + 1] = -points.get(i).rightM();
            x += xy[2 * i] / points.size();
            y += xy[2 * i + 1] / points.size();
            top = Math.max(top, points.get(i).heightM());
        }
        if (obstacle.getKind() == ObstacleKind.AREA) {
            scene.area(Style.area(ink, fill, 0.2), obstacle.getId(), xy);
        } else if (obstacle.getKind() == ObstacleKind.LINE) {
            scene.path(Style.line(ink, 0.5), obstacle.getId(), xy);
        } else {
            scene.disc(x, y, 0.8, Style.area(ink, fill, 0.25), obstacle.getId());
        }
        scene.callout(x, y, Projects.label(obstacle) + String.format(Locale.ROOT, " %.1f m", top), PlanGround.LABEL_MM, ink,
                obstacle.getId());
    }
}
