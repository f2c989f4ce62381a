package slopewright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

import slopewright.drawing.Mark.Anchor;
import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.Obstacle;
import slopewright.model.ProfilePoint;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.SectorEdge;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SurfacePlan;
import slopewright.siting.UnitPlan;
import slopewright.siting.site.ObstacleShapes;

/**
 * The vertical section along the approach: distance from the threshold to the right of the paper in the landing direction, height
 * above the threshold upward and exaggerated. Heights are differences of elevations, without curvature.
 */
public final class SectionScene {

    private static final double LEAST_REACH_M = 600;
    private static final double MOST_REACH_M = 6000;
    private static final double LABEL_MM = 2.2;

    private final DrawnAid drawn;
    private final Siting siting;
    private final SceneBuilder scene = new SceneBuilder();
    private final double reach;
    private final double past;

    private SectionScene(DrawnAid drawn) {
        this.drawn = drawn;
        siting = drawn.siting();
        double outermost = LEAST_REACH_M;
        for (Obstacle obstacle : drawn.project().getAerodrome().getObstacles()) {
            try {
                boolean under = siting.surface().flatMap(plan -> ObstacleShapes.compare(obstacle, drawn.frame(), plan.geometry()))
                        .isPresent();
                if (under) {
                    for (FramePoint point : ObstacleShapes.points(obstacle, drawn.frame())) {
                        outermost = Math.max(outermost, -point.alongM() * 1.15);
                    }
                }
            } catch (SitingException e) {
                // what has no place is a finding of its own and not drawn
                continue;
            }
        }
        reach = Math.min(MOST_REACH_M, outermost);
        past = siting.distanceM() + Math.max(60, reach * 0.12);
    }

    /**
     * Draws the section.
     *
     * @param drawn the aid
     * @return the scene
     */
    public static Scene of(DrawnAid drawn) {
        return new SectionScene(drawn).build();
    }

    private Scene build() {
        double top = Math.max(25, (reach + siting.distanceM()) * Angles.tanDeg(siting.slopeDeg() + 0.8));
        double low = -Math.max(4, top * 0.12);
        corridor();
        ground(low);
        beams();
        surface();
        obstacles();
        wheels();
        scene.path(Style.line(Ink.TEXT, 0.3), "", 0, low, 0, top * 0.06);
        scene.label(0, low, "threshold", Anchor.MIDDLE, LABEL_MM, 0.8, Ink.TEXT, "");
        axis(low, top);
        double wide = reach + past;
        double exaggeration = Math.max(1, Math.round(wide / (top - low) / 2.6));
        List<String> captions = new ArrayList<>();
        captions.add(String.format(Locale.ROOT,
                "Heights %.0f times exaggerated. Slope %s, lowest on-slope signal %s, eye height over the %s"
                + " %.2f m%s.", exaggeration, Angles.format(siting.slopeDeg()), Angles.format(siting.lowestOnSlopeDeg()),
                        drawn.originName(),
                siting.eyeHeightM(), drawn.host() instanceof RunwayEnd ? " (MEHT)" : ""));
        captions.add("Green: on-slope corridor. Violet: obstacle surface. Blue: wheels on the lowest on-slope signal. "
                + "Heights are without curvature.");
        return new Scene("Section, " + drawn.name(), -reach, low, past, top, exaggeration, scene.marks(), captions);
    }

    private DoubleUnaryOperator ray(FramePoint lens, double angleDeg) {
        return along -> lens.heightM() + (lens.alongM() - along) * Angles.tanDeg(angleDeg);
    }

    private void corridor() {
        double upper = siting.slopeDeg() + (siting.slopeDeg() - siting.lowestOnSlopeDeg());
        DoubleUnaryOperator bottom = ray(siting.reference(), siting.lowestOnSlopeDeg());
        DoubleUnaryOperator top = ray(siting.reference(), upper);
        scene.area(Style.fill(Ink.CORRIDOR), "", -reach, bottom.applyAsDouble(-reach), siting.distanceM(), siting.reference().heightM(),
                -reach,
                top.applyAsDouble(-reach));
        scene.path(Style.dashed(Ink.GREEN, 0.25), "", -reach, ray(siting.reference(), siting.slopeDeg()).applyAsDouble(-reach),
                siting.distanceM(), siting.reference().heightM());
        scene.label(-reach * 0.72, ray(siting.reference(), siting.slopeDeg()).applyAsDouble(-reach * 0.72), "slope "
                + Angles.format(siting.slopeDeg()),
                Anchor.START, LABEL_MM, 1.2, Ink.GREEN, "");
    }

    private void beams() {
        List<Double> drawnAngles = new ArrayList<>();
        for (UnitPlan unit : siting.units()) {
            for (SectorEdge edge : unit.edges()) {
                boolean fresh = drawnAngles.stream().noneMatch(angle -> Math.abs(angle - edge.angleDeg()) < 1e-6);
                if (fresh && edge.angleDeg() < siting.slopeDeg() + 2.5) {
                    drawnAngles.add(edge.angleDeg());
                    scene.path(Style.line(Ink.UNIT, 0.15), "", -reach, ray(unit.place(), edge.angleDeg()).applyAsDouble(-reach),
                            unit.place().alongM(), unit.place().heightM());
                }
            }
            scene.disc(unit.place().alongM(), unit.place().heightM(), 0.6, Style.area(Ink.UNIT, Ink.RED, 0.2), "");
        }
    }

    private void ground(double low) {
        List<ProfilePoint> points = new ArrayList<>();
        Optional<Double> datum = Optional.empty();
        if (drawn.host() instanceof RunwayEnd end) {
            datum = Optional.ofNullable(end.getThresholdElevationM());
            points.addAll(end.getSiteProfile());
        }
        points.removeIf(point -> point.getChainageM() == null || point.getElevationM() == null);
        if (points.size() < 2 || datum.isEmpty()) {
            scene.path(Style.line(Ink.GROUND, 0.35), "", Math.min(0, -reach * 0.02), 0, past, 0);
            return;
        }
        double[] xy = new double[points.size() * 2];
        for (int i = 0; i < points.size(); i++) {
            xy[2 * i] = points.get(i).getChainageM();
            xy[2 * i + 1] = points.get(i).getElevationM() - datum.get();
        }
        scene.path(Style.line(Ink.GROUND, 0.4), "", xy);
        scene.label(Math.min(xy[xy.length - 2], past), Math.max(xy[xy.length - 1], low), "ground at the units", Anchor.END, LABEL_MM, -3.4,
                Ink.GROUND, "");
    }

    private void surface() {
        Optional<SurfacePlan> plan = siting.surface();
        if (plan.isPresent()) {
            ProtectionSurface surface = plan.get().geometry();
            double start = plan.get().startAlongM();
            double out = Math.min(surface.lengthM(), start + reach);
            scene.path(Style.line(Ink.SURFACE, 0.4), "", start, surface.startHeightM(), start - out, surface.heightAtOutwardM(out));
            scene.label(start - out * 0.35, surface.heightAtOutwardM(out * 0.35), "obstacle surface " + Angles.format(plan.get()
                    .slopeDeg()), Anchor.START,
                    LABEL_MM, -3.2, Ink.SURFACE, "");
        }
    }

    private void obstacles() {
        for (Obstacle obstacle : drawn.project().getAerodrome().getObstacles()) {
            try {
                obstacle(obstacle);
            } catch (SitingException e) {
                // an obstacle without place or height is a finding of its own; there is nothing to draw
                continue;
            }
        }
    }

    private void obstacle(Obstacle obstacle) {
        var found = siting.surface().flatMap(plan -> ObstacleShapes.compare(obstacle, drawn.frame(), plan.geometry()));
        if (found.isEmpty()) {
            return;
        }
        Ink ink = found.get().excessM() > 0 ? Ink.PENETRATION : Ink.OBSTACLE;
        List<FramePoint> points = ObstacleShapes.points(obstacle, drawn.frame());
        double first = points.stream().mapToDouble(FramePoint::alongM).min().orElseThrow();
        double last = points.stream().mapToDouble(FramePoint::alongM).max().orElseThrow();
        double top = points.stream().mapToDouble(FramePoint::heightM).max().orElseThrow();
        if (last - first > reach * 0.004) {
            scene.area(Style.area(ink, ink, 0.2), obstacle.getId(), first, 0, last, 0, last, top, first, top);
        } else {
            scene.path(Style.line(ink, 0.7), obstacle.getId(), first, 0, first, top);
        }
        scene.label((first + last) / 2, top, Projects.label(obstacle) + String.format(Locale.ROOT, " %.1f m", top), Anchor.MIDDLE, LABEL_MM,
                1,
                ink, obstacle.getId());
    }

    private void wheels() {
        siting.wheelClearanceM().ifPresent(clearance -> {
            DoubleUnaryOperator eye = ray(siting.reference(), siting.lowestOnSlopeDeg());
            double drop = siting.eyeHeightM() - clearance;
            double from = -Math.min(reach, 400);
            scene.path(Style.dashed(Ink.WHEELS, 0.3), "", from, eye.applyAsDouble(from) - drop, 0, clearance);
            scene.path(Style.line(Ink.WHEELS, 0.25), "", 0, 0, 0, clearance);
            scene.label(0, clearance, String.format(Locale.ROOT, "wheels %.2f m", clearance), Anchor.START, LABEL_MM, 0.6, Ink.WHEELS, "");
        });
    }

    private void axis(double low, double top) {
        double step = reach > 2500 ? 1000 : reach > 1200 ? 500 : 100;
        for (double along = -Math.floor(reach / step) * step; along < 0; along += step) {
            scene.path(Style.line(Ink.DIMENSION, 0.12), "", along, low, along, low * 0.72);
            scene.label(along, low, String.format(Locale.ROOT, "%.0f m", along), Anchor.MIDDLE, 2, 0.6, Ink.DIMENSION, "");
        }
        double rise = top > 150 ? 50 : top > 60 ? 20 : 10;
        for (double height = rise; height < top; height += rise) {
            scene.path(Style.line(Ink.DIMENSION, 0.12), "", past - (past + reach) * 0.012, height, past, height);
            scene.label(past - (past + reach) * 0.014, height, String.format(Locale.ROOT, "%.0f m", height), Anchor.END, 2, -0.8,
                    Ink.DIMENSION, "");
        }
    }
}
