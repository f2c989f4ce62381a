package slopewright.drawing.plan;

import java.util.ArrayList;
import java.util.List;

import slopewright.drawing.internal.layout.SceneBuilder;
import slopewright.drawing.internal.obstacles.OmittedObstacles;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Frame;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.LegendEntry;
import slopewright.drawing.scene.Mark.Anchor;
import slopewright.drawing.scene.PaperArea;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.Style;
import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Runway;
import slopewright.model.util.Projects;
import slopewright.siting.SurfacePlan;
import slopewright.siting.UnitPlan;

/** Plans of one approach aid in its own frame: landing direction to the right, metres, origin at the threshold or hover point. */
public final class PlanScene {

    private static final double MARGIN_M = 25;
    private static final double MOST_ASPECT = 2.9;
    private static final double LEAST_ASPECT = 1.8;
    private static final double WIDEST_DETAIL_M = 90;
    private static final double SAME_BAR_M = 6;
    /** Where units stand closer on paper, only the close-up bears their dimensions. */
    private static final double LEAST_DIMENSION_MM = 2.4;

    private final DrawnAid drawn;
    private final SceneBuilder scene;
    private final PlanGround ground;

    private PlanScene(DrawnAid drawn, PaperArea area) {
        this.drawn = drawn;
        scene = new SceneBuilder(area);
        ground = new PlanGround(drawn, scene);
    }

    /**
     * Draws the surroundings of the units: threshold, markings, units with their settings and dimensions.
     *
     * @param drawn the aid
     * @return the scene
     */
    public static Scene layout(DrawnAid drawn) {
        return layout(drawn, PaperArea.usual());
    }

    /**
     * Draws the surroundings of the units for an area on paper.
     *
     * @param drawn the aid
     * @param area  the area
     * @return the scene
     * @throws IllegalArgumentException where the area has a scale at which the layout does not fit
     */
    public static Scene layout(DrawnAid drawn, PaperArea area) {
        return new PlanScene(drawn, area).layoutScene();
    }

    /**
     * Draws the units of the nearest bar close up, with lens heights and offsets.
     *
     * @param drawn the aid
     * @return the scene
     */
    public static Scene detail(DrawnAid drawn) {
        return detail(drawn, PaperArea.usual());
    }

    /**
     * Draws the units of the nearest bar for an area on paper.
     *
     * @param drawn the aid
     * @param area  the area
     * @return the scene
     * @throws IllegalArgumentException where the area has a scale at which they do not fit
     */
    public static Scene detail(DrawnAid drawn, PaperArea area) {
        return new PlanScene(drawn, area).detailScene();
    }

    /**
     * Draws the whole obstacle surface with the obstacles.
     *
     * @param drawn the aid
     * @return the scene; the layout where there is no surface
     */
    public static Scene surface(DrawnAid drawn) {
        return surface(drawn, PaperArea.usual());
    }

    /**
     * Draws the whole obstacle surface for an area on paper.
     *
     * @param drawn the aid
     * @param area  the area
     * @return the scene; the layout where there is no surface
     * @throws IllegalArgumentException where the area has a scale at which it does not fit
     */
    public static Scene surface(DrawnAid drawn, PaperArea area) {
        return drawn.siting().surface().isEmpty() ? layout(drawn, area) : new PlanScene(drawn, area).surfaceScene();
    }

    private Frame framed(Frame needed) {
        return scene.paper().isFilled() ? scene.paper().plan(needed) : needed.atMost(MOST_ASPECT).atLeast(LEAST_ASPECT);
    }

    private double extent(boolean right) {
        double sign = right ? 1 : -1;
        double units = drawn.siting().units().stream().mapToDouble(unit -> sign * unit.place().rightM()).max().orElse(0);
        double pad = Projects.helipad(drawn.host()).map(helipad -> helipad.getSafetyAreaWidthM()).orElse(0.0) / 2;
        return Math.max(Math.max(pad, drawn.atRunway() ? ground.halfWidthM() : 0), units);
    }

    private Scene layoutScene() {
        List<UnitPlan> units = drawn.siting().units();
        double far = Math.max(drawn.atRunway() ? 60 : extent(true), units.stream().mapToDouble(unit -> unit.place().alongM()).max()
                .orElse(0));
        double near = Math.min(drawn.atRunway() ? -30 : -extent(true), units.stream().mapToDouble(unit -> unit.place().alongM()).min()
                .orElse(0));
        double reach = Math.max(far - near, 60);
        double side = drawn.atRunway() ? MARGIN_M + reach * 0.05 : reach * 0.2;
        Frame frame = framed(new Frame(near - reach * 0.12, -extent(true) - side, far + reach * 0.22, extent(false) + side));
        ground.pavement(frame, true);
        ground.edges();
        ground.units(Math.max(3, frame.width() * 0.007), true);
        PlanDimensions dimensions = new PlanDimensions(drawn, scene, frame.width() * 0.006);
        boolean left = units.stream().allMatch(unit -> unit.place().rightM() <= 0);
        double below = left ? -(drawn.atRunway() ? ground.halfWidthM() : extent(true)) - side * 0.45 : -extent(true) - side * 0.5;
        dimensions.along(units, below);
        if (drawn.atRunway() && !units.isEmpty()) {
            double first = units.get(0).place().alongM();
            List<UnitPlan> bar = units.stream().filter(unit -> Math.abs(unit.place().alongM() - first) < SAME_BAR_M).toList();
            if (leastSpacingM(bar) * scene.paper().letteredWidthMm() / frame.width() > LEAST_DIMENSION_MM) {
                dimensions.across(bar, ground.halfWidthM(), first - frame.width() * 0.03);
            }
        }
        ground.scaleBar(frame);
        ground.north(frame);
        List<String> captions = new ArrayList<>(List.of(drawn.say("drawing.plan.caption", Words.m(drawn.siting().distanceM()),
                drawn.origin(), Words.degrees(drawn.frame().bearingDeg()), Words.term(drawn.language().usesFeet() ? "drawing.feet"
                : "drawing.metres"))));
        PlanObstacles obstacles = new PlanObstacles(drawn, scene, frame);
        captions.addAll(obstacles.draw());
        List<LegendEntry> legend = new ArrayList<>(ground.legend());
        legend.addAll(obstacles.legend());
        return obstacles.told(scene.build(drawn.say("drawing.plan.title", Words.name(drawn.name())), frame, 1, captions, legend));
    }

    private static double leastSpacingM(List<UnitPlan> bar) {
        List<Double> places = bar.stream().map(unit -> unit.place().rightM()).sorted().toList();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < places.size(); i++) {
            least = Math.min(least, places.get(i) - places.get(i - 1));
        }
        return least;
    }

    private Scene detailScene() {
        List<UnitPlan> all = drawn.siting().units();
        List<UnitPlan> units = all.stream().filter(unit -> Math.abs(unit.place().alongM() - all.get(0).place().alongM()) < SAME_BAR_M
                && (!drawn.atRunway() || Math.signum(unit.place().rightM()) == Math.signum(all.get(0).place().rightM()))).toList();
        double along = units.stream().mapToDouble(unit -> unit.place().alongM()).average().orElse(0);
        double low = units.stream().mapToDouble(unit -> -unit.place().rightM()).min().orElse(0);
        double high = units.stream().mapToDouble(unit -> -unit.place().rightM()).max().orElse(0);
        double edge = drawn.atRunway() ? Math.copySign(ground.halfWidthM(), low + high) : (low + high) / 2;
        low = Math.min(low, edge);
        high = Math.max(high, edge);
        double margin = Math.max(4, (high - low) * 0.14);
        double width = Math.min(WIDEST_DETAIL_M, Math.max(24, (high - low) * 1.9));
        Frame frame = framed(new Frame(along - width * 0.45, low - margin, along + width * 0.55, high + margin));
        ground.pavement(frame, false);
        ground.edges();
        ground.units(1.6, false);
        for (UnitPlan unit : units) {
            double height = unit.place().heightM();
            String text = drawn.say("drawing.detail.unit", Words.name(unit.id()), Words.deg(unit.settingDeg()),
                    Words.name(height < 0 ? "-" : "+"), Words.m(Math.abs(height)),
                    Message.of(unit.place().rightM() < 0 ? "drawing.left" : "drawing.right", Words.m(Math.abs(unit.place().rightM()))));
            scene.label(along + width * 0.07, -unit.place().rightM(), text, Anchor.START, PlanGround.LABEL_MM, -0.8, Ink.TEXT, drawn
                    .elementId(unit));
        }
        new PlanDimensions(drawn, scene, frame.width() * 0.006).across(units, drawn.atRunway() ? ground.halfWidthM() : 0,
                along - width * 0.12);
        ground.scaleBar(frame);
        ground.north(frame);
        List<String> captions = List.of(drawn.say("drawing.detail.caption", Words.m(along), drawn.origin(),
                Words.m(drawn.frame().originElevationM())));
        return OmittedObstacles.untold(scene.build(drawn.say("drawing.detail.title", Words.name(drawn.name())), frame, 1, captions,
                ground.legend()), drawn);
    }

    private Scene surfaceScene() {
        SurfacePlan plan = drawn.siting().surface().orElseThrow();
        List<FramePoint> corners = plan.geometry().corners();
        double[] xy = new double[8];
        double minX = 0;
        double half = 200;
        for (int i = 0; i < 4; i++) {
            xy[2 * i] = corners.get(i).alongM();
            xy[2 * i + 1] = -corners.get(i).rightM();
            minX = Math.min(minX, xy[2 * i]);
            half = Math.max(half, Math.abs(xy[2 * i + 1]));
        }
        double length = Projects.runway(drawn.host()).map(Runway::getLengthM).orElse(400.0);
        double maxX = Math.min(length, -minX * 0.2);
        double margin = (maxX - minX) * 0.02;
        Frame frame = framed(new Frame(minX - margin, -half * 1.08, maxX + margin, half * 1.08));
        scene.area(Style.area(Ink.SURFACE, Ink.PAPER, 0.35), "", xy);
        scene.path(Style.dashed(Ink.AXIS, 0.15), "", xy[6] / 2 + xy[4] / 2, xy[5] / 2 + xy[7] / 2, 0, 0);
        ground.pavement(new Frame(-margin, 0, maxX, 0), false);
        PlanObstacles obstacles = new PlanObstacles(drawn, scene, frame);
        List<String> found = obstacles.draw();
        ground.units(0, false);
        ground.scaleBar(frame);
        ground.north(frame);
        List<LegendEntry> legend = new ArrayList<>(List.of(LegendEntry.line(drawn.say("drawing.legend.surface"),
                Style.line(Ink.SURFACE, 0.35))));
        legend.addAll(obstacles.legend());
        legend.add(LegendEntry.disc(drawn.say("drawing.legend.units"), Style.area(Ink.UNIT, Ink.RED, 0.2)));
        List<String> captions = new ArrayList<>(List.of(drawn.say("drawing.surface.caption", Words.deg(plan.slopeDeg()),
                Words.wholeM(plan.startAlongM()), Words.wholeM(plan.innerEdgeM()), Words.wholeM(plan.lengthM()), drawn.origin())));
        captions.addAll(found);
        return obstacles.told(scene.build(drawn.say("drawing.surface.title", Words.name(drawn.name())), frame, 1, captions, legend));
    }
}
