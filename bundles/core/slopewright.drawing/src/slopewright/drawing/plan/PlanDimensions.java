package slopewright.drawing.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import slopewright.drawing.internal.layout.SceneBuilder;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark.Anchor;
import slopewright.drawing.scene.Style;
import slopewright.siting.UnitPlan;

/** Dimension lines of a plan. */
final class PlanDimensions {

    private static final double SAME_BAR_M = 2;
    private static final double LEFT_DEG = 180;
    private static final Style LINE = Style.line(Ink.DIMENSION, 0.15);

    private static final Style EXTENSION = Style.line(Ink.DIMENSION, 0.09);

    private final DrawnAid drawn;
    private final SceneBuilder scene;
    private final double tick;

    PlanDimensions(DrawnAid drawn, SceneBuilder scene, double tickM) {
        this.drawn = drawn;
        this.scene = scene;
        tick = tickM;
    }

    /** Draws the chain from the origin over every bar, at a level of the drawing. */
    void along(List<UnitPlan> units, double y) {
        List<Double> bars = new ArrayList<>();
        units.stream().map(unit -> unit.place().alongM()).sorted().forEach(along -> {
            if (bars.isEmpty() || along - bars.get(bars.size() - 1) > SAME_BAR_M) {
                bars.add(along);
            }
        });
        double before = 0;
        for (double bar : bars) {
            double nearest = units.stream().filter(unit -> Math.abs(unit.place().alongM() - bar) <= SAME_BAR_M)
                    .mapToDouble(unit -> -unit.place().rightM()).min().orElse(y);
            scene.path(EXTENSION, "", bar, nearest - 2 * tick, bar, y - tick);
            if (Math.abs(bar - before) > SAME_BAR_M) {
                level(before, bar, y, before == 0);
                before = bar;
            }
        }
    }

    private void level(double x1, double x2, double y, boolean withUnit) {
        scene.path(LINE, "", x1, y, x2, y);
        scene.path(LINE, "", x1, y - tick, x1, y + tick);
        scene.path(LINE, "", x2, y - tick, x2, y + tick);
        scene.label((x1 + x2) / 2, y, drawn.number(Math.abs(x2 - x1)) + (withUnit ? " " + drawn.unitName() : ""), Anchor.MIDDLE,
                PlanGround.LABEL_MM, 0.8,
                Ink.TEXT, "");
    }

    /**
     * Draws the chain across the runway: edge to inner unit and from unit to unit, on each side that has some.
     *
     * @param units the units of one bar
     * @param edgeM half the width of the runway; zero starts at the centre line
     * @param x     where the chain lies
     */
    void across(List<UnitPlan> units, double edgeM, double x) {
        for (int side : new int[] {-1, 1}) {
            List<UnitPlan> there = units.stream().filter(unit -> Math.signum(unit.place().rightM()) == side)
                    .sorted(Comparator.comparingDouble(unit -> Math.abs(unit.place().rightM()))).toList();
            double before = side * edgeM;
            for (UnitPlan unit : there) {
                upright(x, -before, -unit.place().rightM());
                before = unit.place().rightM();
            }
        }
    }

    private void upright(double x, double y1, double y2) {
        if (Math.abs(y2 - y1) < 0.005) {
            return;
        }
        scene.path(LINE, "", x, y1, x, y2);
        scene.path(LINE, "", x - tick, y1, x + tick, y1);
        scene.path(LINE, "", x - tick, y2, x + tick, y2);
        scene.callout(x - tick, (y1 + y2) / 2, drawn.number(Math.abs(y2 - y1)), PlanGround.LABEL_MM, LEFT_DEG,
                Ink.TEXT, "");
    }
}
