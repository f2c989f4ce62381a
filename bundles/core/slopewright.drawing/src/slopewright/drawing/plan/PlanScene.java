package slopewright.drawing.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import slopewright.drawing.internal.layout.SceneBuilder;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Frame;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.LegendEntry;
import slopewright.drawing.scene.Mark.Anchor;
import slopewright.drawing.scene.PaperArea;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.Style;
import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
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

    private PlanScene(DrawnAid drawn, PaperArea room) {
        this.drawn = drawn;
        scene = new SceneBuilder(room);
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
     * Draws the surroundings of the units for a room on paper.
     *
     * @param drawn the aid
     * @param room  the room
     * @return the scene
     * @throws IllegalArgumentException where the room has a scale at which the layout does not fit
     */
    public static Scene layout(DrawnAid drawn, PaperArea room) {
        return new PlanScene(drawn, room).layoutScene();
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
     * Draws the units of the nearest bar for a room on paper.
     *
     * @param drawn the aid
     * @param room  the room
     * @return the scene
     * @throws IllegalArgumentException where the room has a scale at which they do not fit
     */
    public static Scene detail(DrawnAid drawn, PaperArea room) {
        return new PlanScene(drawn, room).detailScene();
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
     * Draws the whole obstacle surface for a room on paper.
     *
     * @param drawn the aid
     * @param room  the room
     * @return the scene; the layout where there is no surface
     * @throws IllegalArgumentException where the room has a scale at which it does not fit
     */
    public static Scene surface(DrawnAid drawn, PaperArea room) {
        return drawn.siting().surface().isEmpty() ? layout(drawn, room) : new PlanScene(drawn, room).surfaceScene();
    }

    private Frame framed(Frame needed) {
        return scene.room().isFilled() ? scene.room().plan(needed) : needed.atMost(MOST_ASPECT).atLeast(LEAST_ASPECT);
    }

    private boolean atRunway() {
        return drawn.host() instanceof RunwayEnd;
    }

    private double extent(boolean right) {
        double sign = right ? 1 : -1;
        double units = drawn.siting().units().stream().mapToDouble(unit -> sign * unit.place().rightM()).max().orElse(0);
        double pad = Projects.helipad(drawn.host()).map(one -> one.getSafetyAreaWidthM()).orElse(0.0) / 2;
        return Math.max(Math.max(pad, atRunway() ? ground.halfWidthM() : 0), units);
    }

    private Scene layoutScene() {
        List<UnitPlan> units = drawn.siting().units();
        double far = Math.max(atRunway() ? 60 : extent(true), units.stream().mapToDouble(unit -> unit.place().alongM()).max().orElse(0));
        double near = Math.min(atRunway() ? -30 : -extent(true), units.stream().mapToDouble(unit -> unit.place().alongM()).min().orElse(0));
        double reach = Math.max(far - near, 60);
        double side = atRunway() ? MARGIN_M + reach * 0.05 : reach * 0.2;
        Frame frame = framed(new Frame(near - reach * 0.12, -extent(true) - side, far + reach * 0.22, extent(false) + side));
        ground.pavement(frame, true);
        ground.edges();
        ground.units(Math.max(3, frame.width() * 0.007), true);
        PlanDimensions dimensions = new PlanDimensions(scene, frame.width() * 0.006);
        boolean left = units.stream().allMatch(unit -> unit.place().rightM() <= 0);
        double below = left ? -(atRunway() ? ground.halfWidthM() : extent(true)) - side * 0.45 : -extent(true) - side * 0.5;
        dimensions.along(units, below);
        if (atRunway() && !units.isEmpty()) {
            double first = units.get(0).place().alongM();
            List<UnitPlan> bar = units.stream().filter(unit -> Math.abs(unit.place().alongM() - first) < SAME_BAR_M).toList();
            if (leastSpacingM(bar) * scene.room().letteredWidthMm() / frame.width() > LEAST_DIMENSION_MM) {
                dimensions.across(bar, ground.halfWidthM(), first - frame.width() * 0.03);
            }
        }
        ground.scaleBar(frame);
        ground.north(frame);
        List<String> captions = List.of(String.format(Locale.ROOT,
                "Row, wing bar or nearest bar %.2f m from the %s; landing direction to the right, %.2f° true. Dimensions in metres.",
                drawn.siting().distanceM(), drawn.originName(), drawn.frame().bearingDeg()));
        return scene.build("Layout, " + drawn.name(), frame, 1, captions, ground.legend());
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
                && (!atRunway() || Math.signum(unit.place().rightM()) == Math.signum(all.get(0).place().rightM()))).toList();
        double along = units.stream().mapToDouble(unit -> unit.place().alongM()).average().orElse(0);
        double low = units.stream().mapToDouble(unit -> -unit.place().rightM()).min().orElse(0);
        double high = units.stream().mapToDouble(unit -> -unit.place().rightM()).max().orElse(0);
        double edge = atRunway() ? Math.copySign(ground.halfWidthM(), low + high) : (low + high) / 2;
        low = Math.min(low, edge);
        high = Math.max(high, edge);
        double room = Math.max(4, (high - low) * 0.14);
        double width = Math.min(WIDEST_DETAIL_M, Math.max(24, (high - low) * 1.9));
        Frame frame = framed(new Frame(along - width * 0.45, low - room, along + width * 0.55, high + room));
        ground.pavement(frame, false);
        ground.edges();
        ground.units(1.6, false);
        for (UnitPlan unit : units) {
            String text = String.format(Locale.ROOT, "%s   setting %s   lens %+.2f m   %.2f m %s", unit.id(), Angles.format(unit
                    .settingDeg()), unit.place().heightM(), Math.abs(unit.place().rightM()), unit.place().rightM() < 0 ? "left" : "right");
            scene.label(along + width * 0.07, -unit.place().rightM(), text, Anchor.START, PlanGround.LABEL_MM, -0.8, Ink.TEXT, drawn
                    .elementId(unit));
        }
        new PlanDimensions(scene, frame.width() * 0.006).across(units, atRunway() ? ground.halfWidthM() : 0, along - width * 0.12);
        ground.scaleBar(frame);
        ground.north(frame);
        List<String> captions = List.of(String.format(Locale.ROOT,
                "Units at %.2f m from the %s. Lens heights are above it (datum elevation %.2f m); offsets are from the centre line.",
                along, drawn.originName(), drawn.frame().originElevationM()));
        return scene.build("Light units, " + drawn.name(), frame, 1, captions, ground.legend());
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
        new PlanObstacles(drawn, scene).draw();
        ground.units(0, false);
        ground.scaleBar(frame);
        ground.north(frame);
        List<LegendEntry> legend = new ArrayList<>(List.of(LegendEntry.line("obstacle surface", Style.line(Ink.SURFACE, 0.35))));
        legend.addAll(PlanObstacles.LEGEND);
        legend.add(LegendEntry.disc("light units", Style.area(Ink.UNIT, Ink.RED, 0.2)));
        List<String> captions = List.of(String.format(Locale.ROOT,
                "Obstacle surface %s from %.0f m, inner edge %.0f m, length %.0f m. Heights are above %s, survey accuracy not added.",
                Angles.format(plan.slopeDeg()), plan.startAlongM(), plan.innerEdgeM(), plan.lengthM(),
                atRunway() ? "the threshold" : "the TLOF"));
        return scene.build("Obstacle surface, " + drawn.name(), frame, 1, captions, legend);
    }
}
