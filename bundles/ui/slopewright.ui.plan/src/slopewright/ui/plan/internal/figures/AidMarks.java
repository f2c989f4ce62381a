package slopewright.ui.plan.internal.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;

import org.eclipse.draw2d.geometry.Rectangle;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.LightUnit;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;
import slopewright.siting.SurfacePlan;
import slopewright.siting.site.PlanAxis;
import slopewright.ui.MessageTexts;
import slopewright.ui.diagram.WorldView;
import slopewright.ui.diagram.figures.MarkPainter;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.Readings;
import slopewright.ui.plan.internal.places.PlanPlaces;

/**
 * An approach aid: bars that join its units, what it is, and the settings of its units beside them. From afar, where the units run into
 * each other, one symbol stands for all.
 */
public final class AidMarks {

    private static final double TITLE_MM = 2.4;
    private static final double LABEL_MM = 2;
    private static final double LEAST_SPACING_PX = 11;
    private static final double LEADER_FROM_PX = 18;

    private final PlanContext context;
    private final ApproachAid aid;
    private final PlanAxis axis;
    private final WorldView view;
    private final MarkPainter painter;
    private final Marks marks;
    private final List<LightUnit> placed;

    private AidMarks(PlanContext context, ApproachAid aid, PlanAxis axis) {
        this.context = context;
        this.aid = aid;
        this.axis = axis;
        this.view = context.diagram().view();
        this.painter = new MarkPainter(view, context.diagram().fonts());
        this.marks = new Marks(aid.getId());
        this.placed = placed(aid);
    }

    /** Draws an aid without its units, nothing where none has a place. */
    public static List<Mark> of(PlanContext context, ApproachAid aid) {
        Optional<PlanAxis> axis = axis(context, aid);
        if (axis.isEmpty() || placed(aid).isEmpty()) {
            return List.of();
        }
        AidMarks drawing = new AidMarks(context, aid, axis.get());
        drawing.draw();
        return drawing.marks.list();
    }

    private static Optional<PlanAxis> axis(PlanContext context, ApproachAid aid) {
        return Projects.host(aid).flatMap(context::axis);
    }

    private static List<LightUnit> placed(ApproachAid aid) {
        return aid.getUnits().stream().filter(unit -> unit.getAlongM() != null && unit.getRightM() != null).toList();
    }

    /** Returns whether the units of an aid run into each other on the screen, so that one symbol stands for all. */
    public static boolean isFar(PlanContext context, ApproachAid aid) {
        List<LightUnit> units = placed(aid);
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < units.size(); i++) {
            least = Math.min(least, Math.hypot(units.get(i).getAlongM() - units.get(i - 1).getAlongM(),
                    units.get(i).getRightM() - units.get(i - 1).getRightM()));
        }
        return least * context.diagram().view().scale() < LEAST_SPACING_PX;
    }

    /** Returns where a unit stands in the scene, empty where that is not known. */
    public static Optional<ScenePoint> place(PlanContext context, LightUnit unit) {
        if (unit.getAlongM() == null || unit.getRightM() == null) {
            return Optional.empty();
        }
        return Projects.host(unit).flatMap(context::axis).map(axis -> PlanPlaces.point(axis, unit.getAlongM(), unit.getRightM()));
    }

    /** Returns the place a number of pixels before a unit, on the side of the approach. */
    public static Optional<ScenePoint> before(PlanContext context, LightUnit unit, double px) {
        if (unit.getAlongM() == null || unit.getRightM() == null) {
            return Optional.empty();
        }
        double along = unit.getAlongM() - px / context.diagram().view().scale();
        return Projects.host(unit).flatMap(context::axis).map(axis -> PlanPlaces.point(axis, along, unit.getRightM()));
    }

    /** Returns what an aid is called in the plan: its name, slope and distance. */
    public static String title(PlanContext context, ApproachAid aid) {
        StringBuilder text = new StringBuilder(MessageTexts.label(aid));
        if (aid.getSlopeDeg() != null) {
            text.append("  ").append(Readings.angle(aid.getSlopeDeg()));
        }
        context.layout(aid).map(Siting::distanceM).ifPresent(distance -> text.append("  ").append(Readings.length(distance)));
        return text.toString();
    }

    private void draw() {
        boolean far = isFar(context, aid);
        bars().forEach(bar -> marks.line(Style.line(Ink.UNIT, far ? 0.9 : 0.3), bar));
        LightUnit outermost = outermost();
        ScenePoint end = at(outermost);
        if (far) {
            marks.disc(at(placed.get(0)), 0.7, Style.area(Ink.UNIT, Ink.PAPER, 0.3));
            marks.disc(end, 0.7, Style.area(Ink.UNIT, Ink.PAPER, 0.3));
        }
        LabelPlacer placer = new LabelPlacer();
        placed.forEach(unit -> placer.keepFree(view.toX(at(unit).x()), view.toY(at(unit).y()), UnitMarks.halfPx(view)));
        ScenePoint outward = PlanPlaces.point(axis, outermost.getAlongM(), outermost.getRightM() + (outermost.getRightM() < 0 ? -1 : 1));
        label(placer, end, outward, title(context, aid), TITLE_MM, Ink.UNIT);
        if (!far) {
            for (LightUnit unit : placed) {
                ScenePoint on = PlanPlaces.point(axis, unit.getAlongM() + 1, unit.getRightM());
                label(placer, at(unit), on, text(unit), LABEL_MM, Ink.TEXT);
            }
        }
    }

    private static String text(LightUnit unit) {
        String setting = unit.getSettingDeg() == null || unit.getTransitions().isEmpty() ? "" : "  " + Readings.angle(unit.getSettingDeg());
        return Objects.requireNonNullElse(unit.getLabel(), "?") + setting;
    }

    private void label(LabelPlacer placer, ScenePoint from, ScenePoint toward, String text, double sizeMm, Ink ink) {
        double length = Math.hypot(toward.x() - from.x(), toward.y() - from.y());
        double toX = (toward.x() - from.x()) / length;
        double toY = -(toward.y() - from.y()) / length;
        double x = view.toX(from.x());
        double y = view.toY(from.y());
        Rectangle size = painter.box(new Mark.Label(from, text, Mark.Anchor.MIDDLE, sizeMm, 0, ink, ""));
        Rectangle box = placer.place(x, y, size.width, size.height, toX, toY);
        ScenePoint middle = new ScenePoint(view.worldX(box.x + box.width / 2.0), view.worldY(box.y + box.height / 2.0));
        double nearX = Math.max(box.x, Math.min(box.x + box.width, x));
        double nearY = Math.max(box.y, Math.min(box.y + box.height, y));
        if (Math.hypot(nearX - x, nearY - y) > LEADER_FROM_PX) {
            marks.line(Style.line(Ink.DIMENSION, 0.15), List.of(from, new ScenePoint(view.worldX(nearX), view.worldY(nearY))));
        }
        marks.text(middle, text, Mark.Anchor.MIDDLE, sizeMm, 0, ink);
    }

    private ScenePoint at(LightUnit unit) {
        return PlanPlaces.point(axis, unit.getAlongM(), unit.getRightM());
    }

    private LightUnit outermost() {
        return placed.stream().max((first, second) -> Double.compare(Math.abs(first.getRightM()), Math.abs(second.getRightM())))
                .orElseThrow();
    }

    /** Returns the units of each bar on each side, from the runway outward. */
    private List<List<ScenePoint>> bars() {
        Map<String, List<LightUnit>> bars = new TreeMap<>();
        for (LightUnit unit : placed) {
            String side = unit.getRightM() < 0 ? "L" : "R";
            bars.computeIfAbsent(unit.getBar() + side, key -> new ArrayList<>()).add(unit);
        }
        List<List<ScenePoint>> lines = new ArrayList<>();
        for (List<LightUnit> bar : bars.values()) {
            bar.sort((first, second) -> Double.compare(Math.abs(first.getRightM()), Math.abs(second.getRightM())));
            lines.add(bar.stream().map(this::at).toList());
        }
        return lines;
    }

    /** Draws the outline of the obstacle surface of an aid, with its axis, nothing where there is none. */
    public static List<Mark> surface(PlanContext context, ApproachAid aid) {
        Optional<ApproachHost> host = Projects.host(aid);
        Optional<PlanAxis> axis = host.flatMap(context::axis);
        Optional<ProtectionSurface> surface = context.layout(aid).flatMap(Siting::surface).map(SurfacePlan::geometry);
        return axis.isEmpty() || surface.isEmpty() ? List.of() : surface(axis.get(), surface.get(), aid.getId());
    }

    /** Draws the outline of an obstacle surface in a frame, with its axis. */
    public static List<Mark> surface(PlanAxis axis, ProtectionSurface surface, String id) {
        Marks marks = new Marks(id);
        List<ScenePoint> corners = surface.corners().stream().map(corner -> PlanPlaces.point(axis.toPlane(corner))).toList();
        marks.area(Style.dashed(Ink.SURFACE, 0.3), corners);
        marks.line(Style.dashed(Ink.SURFACE, 0.15), List.of(PlanPlaces.point(axis.toPlane(surface.pointAt(0, 0))),
                PlanPlaces.point(axis.toPlane(surface.pointAt(surface.lengthM(), 0)))));
        return marks.list();
    }
}
