package slopewright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import slopewright.drawing.Mark.Anchor;
import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.Place;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.TaxiwayEdge;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;
import slopewright.siting.UnitPlan;
import slopewright.siting.site.ObstacleShapes;

/** The plan of one approach aid: landing direction to the right, metres. */
public final class PlanScene {

    private static final double MARGIN_M = 40;
    private static final double LABEL_MM = 2.2;
    private static final double DEFAULT_WIDTH_M = 30;

    private final DrawnAid drawn;
    private final SceneBuilder scene = new SceneBuilder();

    private PlanScene(DrawnAid drawn) {
        this.drawn = drawn;
    }

    /**
     * Draws the surroundings of the units: threshold, markings, units with their settings and dimensions.
     *
     * @param drawn the aid
     * @return the scene
     */
    public static Scene layout(DrawnAid drawn) {
        return new PlanScene(drawn).layoutScene();
    }

    /**
     * Draws the whole obstacle surface with the obstacles.
     *
     * @param drawn the aid
     * @return the scene; the layout where there is no surface
     */
    public static Scene surface(DrawnAid drawn) {
        return drawn.siting().surface().isEmpty() ? layout(drawn) : new PlanScene(drawn).surfaceScene();
    }

    private double halfWidthM() {
        return Projects.runway(drawn.host()).map(Runway::getWidthM).orElse(DEFAULT_WIDTH_M) / 2;
    }

    private Scene layoutScene() {
        List<UnitPlan> units = drawn.siting().units();
        double far = units.stream().mapToDouble(unit -> unit.place().alongM()).max().orElse(0);
        double near = units.stream().mapToDouble(unit -> unit.place().alongM()).min().orElse(0);
        double side = Math.max(halfWidthM(), units.stream().mapToDouble(unit -> Math.abs(unit.place().rightM())).max().orElse(0));
        double minX = Math.min(-80, near - MARGIN_M);
        double maxX = far + 2.5 * MARGIN_M;
        double half = side + MARGIN_M;
        ground(minX, maxX);
        taxiways();
        units(true);
        dimensions(units);
        scaleBar(minX + 10, -half + 8, maxX - minX);
        northArrow(maxX - 14, half * 0.78, half);
        List<String> captions = new ArrayList<>();
        captions.add(String.format(Locale.ROOT, "Distance from the %s %.2f m; landing direction to the right, %.1f° true.",
                drawn.originName(), drawn.siting().distanceM(), drawn.frame().bearingDeg()));
        return new Scene("Layout, " + drawn.name(), minX, -half, maxX, half, 1, scene.marks(), captions);
    }

    private Scene surfaceScene() {
        List<FramePoint> corners = drawn.siting().surface().orElseThrow().geometry().corners();
        double[] xy = new double[8];
        double minX = 0;
        double half = 200;
        for (int i = 0; i < 4; i++) {
            xy[2 * i] = corners.get(i).alongM();
            xy[2 * i + 1] = -corners.get(i).rightM();
            minX = Math.min(minX, xy[2 * i]);
            half = Math.max(half, Math.abs(xy[2 * i + 1]));
        }
        double maxX = Projects.runway(drawn.host()).map(Runway::getLengthM).orElse(600.0) * 0.6;
        scene.area(Style.area(Ink.SURFACE, Ink.PAPER, 0.35), "", xy);
        scene.path(Style.dashed(Ink.AXIS, 0.2), "", xy[6] / 2 + xy[4] / 2, xy[5] / 2 + xy[7] / 2, 0, 0);
        ground(0, maxX);
        units(false);
        obstacles();
        scaleBar(minX + (maxX - minX) * 0.03, -half * 0.95, maxX - minX);
        northArrow(maxX * 0.6, half * 0.75, half);
        List<String> captions = List.of(String.format(Locale.ROOT,
                "Obstacle surface %s from %.0f m, inner edge %.0f m, length %.0f m. Heights are above %s.",
                Angles.format(drawn.siting().surface().get().slopeDeg()), drawn.siting().surface().get().startAlongM(),
                drawn.siting().surface().get().innerEdgeM(), drawn.siting().surface().get().lengthM(),
                drawn.host() instanceof RunwayEnd ? "the threshold" : "the TLOF"));
        double margin = (maxX - minX) * 0.02;
        return new Scene("Obstacle surface, " + drawn.name(), minX - margin, -half * 1.08, maxX, half * 1.08, 1, scene.marks(), captions);
    }

    private void ground(double minX, double maxX) {
        double half = halfWidthM();
        if (!(drawn.host() instanceof RunwayEnd end)) {
            helipad();
            return;
        }
        double displaced = end.getDisplacedThresholdM() == null ? 0 : end.getDisplacedThresholdM();
        double length = Projects.runway(end).map(Runway::getLengthM).orElse(maxX + 100) - displaced;
        double right = Math.min(length, maxX);
        scene.area(Style.area(Ink.DIMENSION, Ink.PAVEMENT, 0.2), end.getId(), Math.max(-displaced, minX), -half, right, -half, right, half,
                Math.max(-displaced, minX), half);
        scene.path(Style.dashed(Ink.AXIS, 0.15), "", minX, 0, right, 0);
        int stripes = Math.max(2, (int) Math.round(half / 5.6) * 2);
        double step = (2 * half - 6) / stripes;
        for (int i = 0; i < stripes; i++) {
            double low = -half + 3 + i * step;
            scene.area(Style.fill(Ink.MARKING), "", 6, low + step * 0.25, 36, low + step * 0.25, 36, low + step * 0.75, 6, low
                    + step * 0.75);
        }
        scene.path(Style.line(Ink.TEXT, 0.3), "", 0, -half, 0, half);
        scene.label(48, 0, end.getDesignator() == null ? "" : end.getDesignator(), Anchor.START, 2.8, -1.2, Ink.TEXT, end.getId());
        if (end.getAimingPointDistanceM() != null) {
            double aim = end.getAimingPointDistanceM();
            for (int sign : new int[] {-1, 1}) {
                scene.area(Style.fill(Ink.MARKING), "", aim, sign * half * 0.35, aim + 45, sign * half * 0.35, aim + 45, sign * half * 0.65,
                        aim,
                        sign * half * 0.65);
            }
        }
    }

    private void helipad() {
        Projects.helipad(drawn.host()).ifPresent(pad -> {
            square(pad.getSafetyAreaWidthM(), pad.getSafetyAreaWidthM(), Style.dashed(Ink.DIMENSION, 0.2));
            square(pad.getFatoLengthM(), pad.getFatoWidthM(), Style.area(Ink.DIMENSION, Ink.PAVEMENT, 0.2));
            square(pad.getTlofLengthM(), pad.getTlofWidthM(), Style.area(Ink.DIMENSION, Ink.MARKING, 0.3));
            scene.label(0, 0, "H", Anchor.MIDDLE, 3.5, -1.7, Ink.TEXT, pad.getId());
        });
    }

    private void square(Double length, Double width, Style style) {
        if (length != null && width != null) {
            double x = length / 2;
            double y = width / 2;
            scene.area(style, "", -x, -y, x, -y, x, y, -x, y);
        }
    }

    private void taxiways() {
        for (TaxiwayEdge edge : drawn.project().getAerodrome().getTaxiwayEdges()) {
            double[] xy = new double[edge.getPoints().size() * 2];
            int at = 0;
            for (Place place : edge.getPoints()) {
                FramePoint point = drawn.frame().toFrame(place, drawn.frame().originElevationM());
                xy[at++] = point.alongM();
                xy[at++] = -point.rightM();
            }
            if (at >= 4) {
                scene.path(Style.line(Ink.TAXIWAY, 0.5), edge.getId(), xy);
            }
        }
    }

    private void units(boolean labelled) {
        for (UnitPlan unit : drawn.siting().units()) {
            double x = unit.place().alongM();
            double y = -unit.place().rightM();
            String id = elementId(unit);
            if (labelled) {
                scene.area(Style.area(Ink.UNIT, Ink.PAPER, 0.3), id, x - 1.2, y - 1.8, x + 1.2, y - 1.8, x + 1.2, y + 1.8, x - 1.2, y
                        + 1.8);
                scene.label(x + 4, y, unit.id() + "  " + Angles.format(unit.settingDeg()), Anchor.START, LABEL_MM, -0.9, Ink.TEXT, id);
            }
            scene.disc(x, y, labelled ? 0.7 : 0.5, Style.area(Ink.UNIT, Ink.RED, 0.2), id);
        }
    }

    private String elementId(UnitPlan plan) {
        return drawn.aid().getUnits().stream().filter(unit -> plan.id().equals(unit.getLabel())).map(unit -> unit.getId()).findFirst()
                .orElse("");
    }

    private void dimensions(List<UnitPlan> units) {
        if (units.isEmpty() || !(drawn.host() instanceof RunwayEnd)) {
            return;
        }
        double half = halfWidthM();
        UnitPlan inner = units.get(0);
        double sign = inner.place().rightM() > 0 ? -1 : 1;
        double along = drawn.siting().distanceM();
        double y = -sign * (half + 14);
        arrow(0, y, along, y, String.format(Locale.ROOT, "%.2f m", along));
        double x = inner.place().alongM() - 14;
        double before = sign * half;
        for (UnitPlan unit : units) {
            double place = -unit.place().rightM();
            if (unit.bar() == inner.bar() && place * sign > before * sign) {
                arrowUp(x, before, place, String.format(Locale.ROOT, "%.2f", Math.abs(place - before)));
                before = place;
            }
        }
    }

    private void arrow(double x1, double y1, double x2, double y2, String text) {
        scene.path(Style.line(Ink.DIMENSION, 0.18), "", x1, y1, x2, y2);
        scene.path(Style.line(Ink.DIMENSION, 0.18), "", x1, y1 - 4, x1, y1 + 4);
        scene.path(Style.line(Ink.DIMENSION, 0.18), "", x2, y2 - 4, x2, y2 + 4);
        scene.label((x1 + x2) / 2, y1, text, Anchor.MIDDLE, LABEL_MM, 0.8, Ink.TEXT, "");
    }

    private void arrowUp(double x, double y1, double y2, String text) {
        scene.path(Style.line(Ink.DIMENSION, 0.18), "", x, y1, x, y2);
        scene.path(Style.line(Ink.DIMENSION, 0.18), "", x - 2.5, y1, x + 2.5, y1);
        scene.path(Style.line(Ink.DIMENSION, 0.18), "", x - 2.5, y2, x + 2.5, y2);
        scene.label(x - 3, (y1 + y2) / 2, text, Anchor.END, LABEL_MM, -0.9, Ink.TEXT, "");
    }

    private void obstacles() {
        for (Obstacle obstacle : drawn.project().getAerodrome().getObstacles()) {
            try {
                obstacle(obstacle, ObstacleShapes.points(obstacle, drawn.frame()));
            } catch (SitingException e) {
                // an obstacle without place or height is a finding of its own; there is nothing to draw
                continue;
            }
        }
    }

    private void obstacle(Obstacle obstacle, List<FramePoint> points) {
        Optional<Double> excess = drawn.siting().surface()
                .flatMap(surface -> ObstacleShapes.compare(obstacle, drawn.frame(), surface.geometry())).map(found -> found.excessM());
        Ink ink = excess.filter(above -> above > 0).isPresent() ? Ink.PENETRATION : Ink.OBSTACLE;
        double[] xy = new double[points.size() * 2];
        double top = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < points.size(); i++) {
            xy[2 * i] = points.get(i).alongM();
            xy[2 * i + 1] = -points.get(i).rightM();
            top = Math.max(top, points.get(i).heightM());
        }
        if (obstacle.getKind() == ObstacleKind.AREA) {
            scene.area(Style.area(ink, ink, 0.2), obstacle.getId(), xy);
        } else if (obstacle.getKind() == ObstacleKind.LINE) {
            scene.path(Style.line(ink, 0.5), obstacle.getId(), xy);
        } else {
            scene.disc(xy[0], xy[1], 0.9, Style.fill(ink), obstacle.getId());
        }
        String text = Projects.label(obstacle) + String.format(Locale.ROOT, " %.1f m", top);
        Anchor anchor = xy[0] > -2500 ? Anchor.END : Anchor.START;
        scene.label(xy[0], xy[1], excess.isPresent() ? text : text + " (outside)", anchor, LABEL_MM, 1.6, ink, obstacle.getId());
    }

    private void scaleBar(double x, double y, double widthM) {
        double length = Math.pow(10, Math.floor(Math.log10(widthM / 5)));
        length *= widthM / 5 / length >= 5 ? 5 : widthM / 5 / length >= 2 ? 2 : 1;
        double thick = widthM * 0.004;
        scene.area(Style.area(Ink.TEXT, Ink.TEXT, 0.15), "", x, y, x + length / 2, y, x + length / 2, y + thick, x, y + thick);
        scene.area(Style.area(Ink.TEXT, Ink.PAPER, 0.15), "", x + length / 2, y, x + length, y, x + length, y + thick, x + length / 2, y
                + thick);
        scene.label(x + length, y, String.format(Locale.ROOT, "%.0f m", length), Anchor.START, LABEL_MM, 0, Ink.TEXT, "");
    }

    /** Draws true north: the landing direction lies to the right, so north is turned by a right angle less the bearing. */
    private void northArrow(double x, double y, double size) {
        double angle = Math.toRadians(drawn.frame().bearingDeg());
        double reach = size * 0.1;
        double dx = Math.cos(angle) * reach;
        double dy = Math.sin(angle) * reach;
        scene.path(Style.line(Ink.TEXT, 0.35), "", x - dx, y - dy, x + dx, y + dy);
        scene.area(Style.fill(Ink.TEXT), "", x + dx, y + dy, x + dx * 0.4 - dy * 0.3, y + dy * 0.4 + dx * 0.3, x + dx * 0.4 + dy * 0.3,
                y + dy * 0.4 - dx * 0.3);
        scene.label(x + dx * 1.35, y + dy * 1.35, "N", Anchor.MIDDLE, 2.6, -1.2, Ink.TEXT, "");
    }
}
