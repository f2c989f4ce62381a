package slopewright.drawing.section;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;

import slopewright.drawing.internal.layout.SceneBuilder;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Frame;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark.Anchor;
import slopewright.drawing.scene.Style;
import slopewright.evaluation.AidLayouts;
import slopewright.evaluation.obstacles.SurveyedShape;
import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.geometry.Penetration;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.GlidePathAid;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.ProfilePoint;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.SectorEdge;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SurfacePlan;
import slopewright.siting.UnitPlan;

/** The marks of a vertical section, in the frame that it shows. */
final class SectionMarks {

    static final double LABEL_MM = 1.7;

    /** Lines fall to the right, so there is room above on the right and below on the left. */
    private static final double ABOVE_DEG = 50;
    private static final double BELOW_DEG = -130;
    private static final double SAME_ANGLE_DEG = 1e-6;
    private static final double HIGHEST_ABOVE_SLOPE_DEG = 2.5;

    private final DrawnAid drawn;
    private final Siting siting;
    private final SceneBuilder scene;
    private final Frame frame;

    SectionMarks(DrawnAid drawn, SceneBuilder scene, Frame frame) {
        this.drawn = drawn;
        siting = drawn.siting();
        this.scene = scene;
        this.frame = frame;
    }

    static DoubleUnaryOperator ray(FramePoint lens, double angleDeg) {
        return along -> lens.heightM() + (lens.alongM() - along) * Angles.tanDeg(angleDeg);
    }

    /** Returns where a ray leaves the frame toward the approach. */
    private double reachOf(FramePoint lens, double angleDeg) {
        double rise = frame.maxY() - lens.heightM();
        double byHeight = angleDeg > 0 && rise > 0 ? lens.alongM() - rise / Angles.tanDeg(angleDeg) : frame.minX();
        return Math.max(frame.minX(), byHeight);
    }

    void corridor() {
        double upper = 2 * siting.slopeDeg() - siting.lowestOnSlopeDeg();
        DoubleUnaryOperator bottom = ray(siting.reference(), siting.lowestOnSlopeDeg());
        DoubleUnaryOperator top = ray(siting.reference(), upper);
        double from = frame.minX();
        scene.area(Style.fill(Ink.CORRIDOR), "", from, bottom.applyAsDouble(from), siting.distanceM(), siting.reference().heightM(), from,
                top.applyAsDouble(from));
        scene.path(Style.dashed(Ink.GREEN, 0.25), "", from, ray(siting.reference(), siting.slopeDeg()).applyAsDouble(from),
                siting.distanceM(), siting.reference().heightM());
    }

    void beams(boolean named) {
        List<Double> drawnAngles = new ArrayList<>();
        for (UnitPlan unit : siting.units()) {
            for (SectorEdge edge : unit.edges()) {
                boolean fresh = drawnAngles.stream().noneMatch(angle -> Math.abs(angle - edge.angleDeg()) < SAME_ANGLE_DEG);
                if (fresh && edge.angleDeg() < siting.slopeDeg() + HIGHEST_ABOVE_SLOPE_DEG) {
                    drawnAngles.add(edge.angleDeg());
                    beam(unit, edge, named);
                }
            }
            scene.disc(unit.place().alongM(), unit.place().heightM(), 0.6, Style.area(Ink.UNIT, Ink.RED, 0.2), drawn.elementId(unit));
        }
    }

    private void beam(UnitPlan unit, SectorEdge edge, boolean named) {
        double end = reachOf(unit.place(), edge.angleDeg());
        DoubleUnaryOperator ray = ray(unit.place(), edge.angleDeg());
        scene.path(Style.line(Ink.UNIT, 0.15), drawn.elementId(unit), end, ray.applyAsDouble(end), unit.place().alongM(), unit.place()
                .heightM());
        if (named) {
            double at = end + (unit.place().alongM() - end) * 0.03;
            String name = unit.edges().size() == 1 ? unit.id() + " " : "";
            scene.callout(at, ray.applyAsDouble(at), name + Angles.format(edge.angleDeg()), LABEL_MM, ABOVE_DEG, Ink.UNIT,
                    drawn.elementId(unit));
        }
    }

    void ground() {
        List<ProfilePoint> points = new ArrayList<>();
        if (drawn.host() instanceof RunwayEnd end) {
            points.addAll(end.getSiteProfile());
        }
        Optional<Double> datum = AidLayouts.datumM(drawn.host());
        points.removeIf(point -> point.getChainageM() == null || point.getElevationM() == null);
        points.sort(Comparator.comparing(ProfilePoint::getChainageM));
        scene.path(Style.dashed(Ink.GROUND, 0.2), "", frame.minX(), 0, frame.maxX(), 0);
        if (points.size() < 2 || datum.isEmpty()) {
            return;
        }
        double[] xy = new double[points.size() * 2];
        for (int i = 0; i < points.size(); i++) {
            xy[2 * i] = points.get(i).getChainageM();
            xy[2 * i + 1] = points.get(i).getElevationM() - datum.get();
        }
        scene.path(Style.line(Ink.GROUND, 0.4), "", xy);
    }

    void surface() {
        Optional<SurfacePlan> plan = siting.surface();
        if (plan.isEmpty()) {
            return;
        }
        ProtectionSurface surface = plan.get().geometry();
        double start = plan.get().startAlongM();
        double out = Math.min(surface.lengthM(), start - frame.minX());
        if (out > 0) {
            scene.path(Style.line(Ink.SURFACE, 0.4), "", start, surface.startHeightM(), start - out, surface.heightAtOutwardM(out));
            scene.callout(start - out * 0.45, surface.heightAtOutwardM(out * 0.45), "obstacle surface " + Angles.format(plan.get()
                    .slopeDeg()), LABEL_MM, ABOVE_DEG, Ink.SURFACE, "");
        }
    }

    void glidePath() {
        GlidePathAid path = drawn.host().getGlidePath();
        if (path == null || path.getPathAngleDeg() == null) {
            return;
        }
        Double height = path.getReferenceDatumHeightM();
        double slope = Angles.tanDeg(path.getPathAngleDeg());
        Double origin = path.getOriginAlongM() != null ? path.getOriginAlongM() : height == null ? null : Double.valueOf(height / slope);
        if (origin != null) {
            double end = Math.max(frame.minX(), origin - frame.maxY() / slope);
            scene.path(Style.dashed(Ink.GLIDE_PATH, 0.3), path.getId(), end, (origin - end) * slope, origin, 0);
            double at = end + (origin - end) * 0.3;
            scene.callout(at, (origin - at) * slope, "glide path " + Angles.format(path.getPathAngleDeg()), LABEL_MM, BELOW_DEG,
                    Ink.GLIDE_PATH,
                    path.getId());
        }
    }

    void obstacles() {
        for (Obstacle obstacle : drawn.obstacles()) {
            try {
                obstacle(obstacle);
            } catch (SitingException e) {
                // an obstacle without place or height is a finding of its own; there is nothing to draw
                continue;
            }
        }
    }

    private void obstacle(Obstacle obstacle) {
        Optional<Penetration> found = siting.surface().flatMap(plan -> SurveyedShape.of(obstacle, drawn.frame()).compare(plan.geometry()));
        if (found.isEmpty()) {
            return;
        }
        Ink ink = found.get().excessM() > 0 ? Ink.PENETRATION : Ink.OBSTACLE;
        List<FramePoint> points = SurveyedShape.of(obstacle, drawn.frame()).points();
        double first = points.stream().mapToDouble(FramePoint::alongM).min().orElseThrow();
        double last = points.stream().mapToDouble(FramePoint::alongM).max().orElseThrow();
        double top = points.stream().mapToDouble(FramePoint::heightM).max().orElseThrow();
        double foot = Math.min(0, frame.minY());
        if (obstacle.getKind() == ObstacleKind.AREA) {
            scene.box(Style.area(ink, ink, 0.2), obstacle.getId(), first, foot, last, top);
        } else {
            points.forEach(point -> scene.path(Style.line(ink, 0.6), obstacle.getId(), point.alongM(), foot, point.alongM(), point
                    .heightM()));
            scene.path(Style.line(ink, 0.4), obstacle.getId(), points.stream().flatMapToDouble(point -> DoubleStream.of(point.alongM(),
                    point
                    .heightM())).toArray());
        }
        double middle = (first + last) / 2;
        double accuracy = obstacle.getVerticalAccuracyM() == null ? 0 : obstacle.getVerticalAccuracyM();
        double arm = frame.width() * 0.004;
        scene.path(Style.line(ink, 0.2), "", middle, top, middle, top + accuracy).path(Style.line(ink, 0.2), "", middle - arm, top
                + accuracy, middle + arm, top + accuracy);
        scene.callout(middle, top + accuracy, Projects.label(obstacle) + String.format(Locale.ROOT, " %.1f m", top), LABEL_MM, ink,
                obstacle.getId());
    }

    /** Draws the path of the wheels of the most demanding aeroplanes on the lowest on-slope signal. */
    void wheels() {
        siting.wheelClearanceM().ifPresent(clearance -> {
            double drop = siting.mehtM() - clearance;
            double from = Math.max(frame.minX(), -400);
            scene.path(Style.dashed(Ink.WHEELS, 0.3), "", from, ray(siting.reference(), siting.lowestOnSlopeDeg()).applyAsDouble(from)
                    - drop, 0, clearance);
        });
    }

    /** Draws the threshold or hover point. */
    void origin() {
        scene.path(Style.line(Ink.TEXT, 0.25), "", 0, frame.minY(), 0, frame.maxY() * 0.07);
        scene.callout(0, frame.minY() * 0.5, drawn.originName(), LABEL_MM, Ink.TEXT, "");
    }

    /** Draws distances along the lower edge and heights along the right edge, metres. */
    void axes() {
        double step = step(frame.width() / 7);
        for (double along = Math.ceil(frame.minX() / step) * step; along < frame.maxX(); along += step) {
            scene.path(Style.line(Ink.DIMENSION, 0.12), "", along, frame.minY(), along, frame.minY() + frame.height() * 0.018);
            if (Math.abs(along) > step / 2 && along > frame.minX() + frame.width() * 0.03 && along < frame.maxX() - frame.width() * 0.05) {
                scene.label(along, frame.minY() + frame.height() * 0.018, String.format(Locale.ROOT, "%.0f m", along), Anchor.MIDDLE, 1.5,
                        0.5, Ink.DIMENSION, "");
            }
        }
        double rise = step(frame.height() / 5);
        for (double height = rise; height < frame.maxY() - rise * 0.15; height += rise) {
            scene.path(Style.line(Ink.DIMENSION, 0.12), "", frame.maxX() - frame.width() * 0.008, height, frame.maxX(), height);
            scene.label(frame.maxX() - frame.width() * 0.01, height, String.format(Locale.ROOT, "%.0f m", height), Anchor.END, 1.5, -0.6,
                    Ink.DIMENSION, "");
        }
    }

    private static double step(double wanted) {
        double power = Math.pow(10, Math.floor(Math.log10(wanted)));
        double lead = wanted / power;
        return Math.max(1, power * (lead >= 5 ? 5 : lead >= 2 ? 2 : 1));
    }
}
