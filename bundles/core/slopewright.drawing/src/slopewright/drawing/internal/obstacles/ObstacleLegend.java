package slopewright.drawing.internal.obstacles;

import java.util.ArrayList;
import java.util.List;

import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.LegendEntry;
import slopewright.drawing.scene.Style;
import slopewright.geometry.FramePoint;

/** The key to obstacles: only what is seen. */
public final class ObstacleLegend {

    private final DrawnAid drawn;
    private final List<LegendEntry> entries = new ArrayList<>();

    /** Tells what part of the ground a drawing shows. */
    @FunctionalInterface
    public interface Part {

        /** Returns whether a place can be seen. */
        boolean holds(double alongM, double rightM);
    }

    private ObstacleLegend(DrawnAid drawn) {
        this.drawn = drawn;
    }

    /**
     * Returns the entries of a plan.
     *
     * @param drawn the aid
     * @param seen  the obstacles that are seen
     * @param all   everything that stands there
     * @param part  what the plan shows
     */
    public static List<LegendEntry> plan(DrawnAid drawn, List<DrawnObstacle> seen, DrawnObstacles all, Part part) {
        ObstacleLegend legend = new ObstacleLegend(drawn);
        legend.add(seen.stream().anyMatch(obstacle -> obstacle.isInside() && !obstacle.isThrough()),
                LegendEntry.disc(drawn.say("drawing.legend.inside"), Style.area(Ink.OBSTACLE, Ink.OBSTACLE, 0.25)));
        legend.add(seen.stream().anyMatch(obstacle -> !obstacle.isInside()),
                LegendEntry.disc(drawn.say("drawing.legend.outside"), Style.area(Ink.OBSTACLE, Ink.PAPER, 0.25)));
        legend.points(seen, all, part, LegendEntry.dots(drawn.say("drawing.legend.points"), Style.fill(Ink.OBSTACLE)));
        return legend.entries;
    }

    /** Returns the entries of a section; parameters as for a plan. */
    public static List<LegendEntry> section(DrawnAid drawn, List<DrawnObstacle> seen, DrawnObstacles all, Part part) {
        ObstacleLegend legend = new ObstacleLegend(drawn);
        legend.add(seen.stream().anyMatch(obstacle -> obstacle.isInside() && !obstacle.isThrough()),
                LegendEntry.line(drawn.say("drawing.legend.inside"), Style.line(Ink.OBSTACLE, 0.5)));
        legend.add(seen.stream().anyMatch(obstacle -> !obstacle.isInside()),
                LegendEntry.line(drawn.say("drawing.legend.outside"), Style.dashed(Ink.OBSTACLE, 0.15)));
        legend.points(seen, all, part, LegendEntry.line(drawn.say("drawing.legend.points"), Style.line(Ink.OBSTACLE, 0.15)));
        return legend.entries;
    }

    private void add(boolean wanted, LegendEntry entry) {
        if (wanted) {
            entries.add(entry);
        }
    }

    private void points(List<DrawnObstacle> seen, DrawnObstacles all, Part part, LegendEntry ofPoints) {
        boolean through = seen.stream().anyMatch(DrawnObstacle::isThrough)
                || all.blocks().stream().flatMap(block -> block.above().stream()).anyMatch(point -> holds(part, point));
        boolean governing = seen.stream().anyMatch(obstacle -> all.isGoverning(obstacle.compared()))
                || all.blocks().stream().flatMap(block -> block.compared().stream()).anyMatch(found -> holds(part, found.worst().point()));
        add(all.blocks().stream().anyMatch(block -> isSeen(block, part)), ofPoints);
        add(through, LegendEntry.cross(drawn.say("drawing.legend.through"), Style.line(Ink.PENETRATION, 0.5)));
        add(governing, LegendEntry.disc(drawn.say("drawing.legend.governing"), Style.line(through ? Ink.PENETRATION : Ink.OBSTACLE, 0.25)));
        add(all.topless().stream().anyMatch(topless -> holds(part, topless.place())),
                LegendEntry.line(drawn.say("drawing.legend.topless"), Style.dashed(Ink.OBSTACLE, 0.25)));
    }

    private static boolean holds(Part part, FramePoint point) {
        return part.holds(point.alongM(), point.rightM());
    }

    private static boolean isSeen(DrawnBlock block, Part part) {
        for (int i = 0; i < block.count(); i++) {
            if (part.holds(block.places().alongM()[i], block.places().rightM()[i])) {
                return true;
            }
        }
        return false;
    }
}
