package slopewright.ui.plan.internal.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.model.ApproachDirection;
import slopewright.model.ApproachHost;
import slopewright.model.GlidePathAid;
import slopewright.model.GroundLevel;
import slopewright.model.Helipad;
import slopewright.model.TaxiwayEdge;
import slopewright.model.util.Projects;
import slopewright.siting.site.PlanAxis;
import slopewright.siting.site.PlanPoint;
import slopewright.ui.MessageTexts;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.places.PlanPlaces;

/** Helipads, taxiway edges, ground levels and glide-path antennas. */
public final class SiteMarks {

    private static final double SMALL_MM = 2;
    private static final double LEVELS_FROM_SCALE = 0.25;

    private SiteMarks() {
    }

    /** Draws a helipad: safety area, FATO, TLOF and the letter. */
    public static List<Mark> helipad(PlanContext context, Helipad pad) {
        Marks marks = new Marks(pad.getId());
        Optional<ScenePoint> centre = context.places().point(pad.getPlace());
        if (centre.isEmpty()) {
            return List.of();
        }
        PlanAxis axis = pad.getDirections().stream().filter(direction -> direction.getTrueBearingDeg() != null)
                .flatMap(direction -> context.axis(direction).stream().map(found -> lying(pad, direction, found))).findFirst()
                .orElse(new PlanAxis(new PlanPoint(centre.get().x(), centre.get().y()), value(pad.getFatoBearingDeg(), 0)));
        double safety = value(pad.getSafetyAreaWidthM(), 0);
        double length = value(pad.getFatoLengthM(), 20);
        double width = value(pad.getFatoWidthM(), length);
        square(marks, axis, Style.dashed(Ink.DIMENSION, 0.18), safety, safety);
        square(marks, axis, Style.area(Ink.DIMENSION, Ink.PAVEMENT, 0.25), length, width);
        square(marks, axis, Style.line(Ink.MARKING, 0.4), value(pad.getTlofLengthM(), length / 2), value(pad.getTlofWidthM(), width / 2));
        StrokeDigits.paint(marks, Style.line(Ink.MARKING, 0.6), axis, 'H', -length / 7, -length / 12, length / 3.5, length / 6);
        double below = Math.max(safety, length) * 0.75;
        ScenePoint under = new ScenePoint(centre.get().x(), centre.get().y() - below);
        marks.text(under, MessageTexts.label(pad), Mark.Anchor.MIDDLE, 2.4, -2.5, Ink.TEXT);
        return marks.list();
    }

    /** Turns the axis of a direction along the FATO, where it is known how that lies. */
    private static PlanAxis lying(Helipad pad, ApproachDirection direction, PlanAxis axis) {
        return pad.getFatoBearingDeg() == null ? axis
                : new PlanAxis(axis.origin(), axis.bearingDeg() + pad.getFatoBearingDeg() - direction.getTrueBearingDeg());
    }

    private static double value(Double number, double otherwise) {
        return number == null ? otherwise : number;
    }

    private static void square(Marks marks, PlanAxis axis, Style style, double length, double width) {
        if (length > 0 && width > 0) {
            marks.box(style, axis, -length / 2, -width / 2, length / 2, width / 2);
        }
    }

    /** Draws an approach direction of a helipad: an arrow toward it. */
    public static List<Mark> direction(PlanContext context, ApproachDirection direction) {
        Marks marks = new Marks(direction.getId());
        context.axis(direction).ifPresent(axis -> {
            double scale = context.diagram().view().scale();
            double safety = Projects.helipad(direction).map(Helipad::getSafetyAreaWidthM).orElse(30.0);
            double tip = -safety / 2 - 6 / scale;
            double tail = tip - 40 / scale;
            double wing = 5 / scale;
            marks.stroke(Style.line(Ink.AXIS, 0.35), axis, tail, 0, tip, 0);
            marks.stroke(Style.line(Ink.AXIS, 0.35), axis, tip - 2 * wing, -wing, tip, 0, tip - 2 * wing, wing);
            marks.text(PlanPlaces.point(axis, tail - 22 / scale, 0), String.valueOf(direction.getDesignator()), Mark.Anchor.MIDDLE, 2.6, 0,
                    Ink.TEXT);
        });
        return marks.list();
    }

    /** Draws the edge of a taxiway or apron. */
    public static List<Mark> edge(PlanContext context, TaxiwayEdge edge) {
        Marks marks = new Marks(edge.getId());
        List<ScenePoint> points = edge.getPoints().stream().flatMap(place -> context.places().point(place).stream()).toList();
        marks.line(Style.line(Ink.TAXIWAY, 0.5), points);
        if (!points.isEmpty() && edge.getName() != null && context.diagram().view().scale() > LEVELS_FROM_SCALE) {
            marks.text(points.get(0), edge.getName(), Mark.Anchor.START, SMALL_MM, 2.2, Ink.DIMENSION);
        }
        return marks.list();
    }

    /** Draws a ground level: a cross and, close up, its elevation. */
    public static List<Mark> level(PlanContext context, GroundLevel level) {
        Marks marks = new Marks(level.getId());
        double scale = context.diagram().view().scale();
        Optional<ScenePoint> place = context.places().point(level.getPlace());
        if (place.isEmpty() || scale < LEVELS_FROM_SCALE) {
            return List.of();
        }
        double arm = 3.5 / scale;
        double x = place.get().x();
        double y = place.get().y();
        Style style = Style.line(Ink.GROUND, 0.25);
        marks.line(style, List.of(new ScenePoint(x - arm, y), new ScenePoint(x + arm, y)));
        marks.line(style, List.of(new ScenePoint(x, y - arm), new ScenePoint(x, y + arm)));
        if (level.getPlace().getElevationM() != null && scale > 2 * LEVELS_FROM_SCALE) {
            marks.text(new ScenePoint(x + 1.5 * arm, y), MessageTexts.renderer().fixed(level.getPlace().getElevationM(), 2),
                    Mark.Anchor.START, SMALL_MM, 0, Ink.GROUND);
        }
        return marks.list();
    }

    /** Returns where the antenna of a glide path stands, empty where that was not entered. */
    public static Optional<ScenePoint> antenna(PlanContext context, GlidePathAid path) {
        if (path.getAntennaAlongM() == null || path.getAntennaRightM() == null) {
            return Optional.empty();
        }
        Optional<ApproachHost> host = Projects.host(path);
        return host.flatMap(context::axis).map(axis -> PlanPlaces.point(axis, path.getAntennaAlongM(), path.getAntennaRightM()));
    }

    /** Draws the antenna of a glide path: a mast with a base. */
    public static List<Mark> glidePath(PlanContext context, GlidePathAid path) {
        Marks marks = new Marks(path.getId());
        antenna(context, path).ifPresent(at -> {
            double px = 1 / context.diagram().view().scale();
            List<ScenePoint> diamond = new ArrayList<>();
            diamond.add(new ScenePoint(at.x(), at.y() + 6 * px));
            diamond.add(new ScenePoint(at.x() + 6 * px, at.y()));
            diamond.add(new ScenePoint(at.x(), at.y() - 6 * px));
            diamond.add(new ScenePoint(at.x() - 6 * px, at.y()));
            marks.area(Style.area(Ink.GLIDE_PATH, Ink.PAPER, 0.35), diamond);
            marks.disc(at, 0.5, Style.fill(Ink.GLIDE_PATH));
            marks.text(new ScenePoint(at.x() + 9 * px, at.y()), Objects.requireNonNullElse(path.getName(), Messages.get("plan.antenna")),
                    Mark.Anchor.START, SMALL_MM, 0, Ink.GLIDE_PATH);
        });
        return marks.list();
    }
}
