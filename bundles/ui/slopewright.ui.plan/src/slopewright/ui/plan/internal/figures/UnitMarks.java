package slopewright.ui.plan.internal.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.model.LightColour;
import slopewright.model.LightUnit;
import slopewright.model.Transition;
import slopewright.model.util.Projects;
import slopewright.siting.site.PlanAxis;
import slopewright.ui.diagram.Diagram;
import slopewright.ui.diagram.WorldView;
import slopewright.ui.plan.internal.PlanContext;

/**
 * A light unit: a box whose front, toward the approach, shows the colours of its sectors from the lowest to the highest. A panel is a
 * filled box. It keeps a size on the screen that can be seen and clicked.
 */
public final class UnitMarks {

    private static final double WIDTH_M = 1.5;
    private static final double LEAST_PX = 11;
    private static final double DEPTH_SHARE = 0.8;

    private UnitMarks() {
    }

    /** Returns half the width of the symbol on the screen, pixels. */
    static double halfPx(WorldView view) {
        return Math.max(LEAST_PX, WIDTH_M * view.scale()) / 2;
    }

    /** Draws a unit, nothing where its place is not known or one symbol stands for the whole aid. */
    public static List<Mark> of(PlanContext context, LightUnit unit) {
        Optional<PlanAxis> axis = Projects.host(unit).flatMap(context::axis);
        boolean far = Projects.aid(unit).filter(aid -> AidMarks.isFar(context, aid)).isPresent();
        if (axis.isEmpty() || far || unit.getAlongM() == null || unit.getRightM() == null) {
            return List.of();
        }
        Marks marks = new Marks(unit.getId());
        paint(marks, context.diagram().view(), turned(axis.get(), unit), colours(unit), Ink.UNIT);
        return marks.list();
    }

    /** Draws a unit that would stand at a place of a frame, in a colour of its own. */
    public static void ghost(Marks marks, WorldView view, PlanAxis axis, double alongM, double rightM, Ink ink) {
        PlanAxis at = new PlanAxis(axis.toPlane(alongM, rightM), axis.bearingDeg());
        paint(marks, view, at, List.of(Ink.PAPER), ink);
    }

    private static PlanAxis turned(PlanAxis axis, LightUnit unit) {
        double turn = unit.getAzimuthOffsetDeg() == null ? 0 : unit.getAzimuthOffsetDeg();
        double whole = Projects.aid(unit).map(aid -> aid.getAxisTurnDeg()).orElse(0.0);
        return new PlanAxis(axis.toPlane(unit.getAlongM(), unit.getRightM()), axis.bearingDeg() + turn + whole);
    }

    private static void paint(Marks marks, WorldView view, PlanAxis at, List<Ink> colours, Ink ink) {
        double half = halfPx(view) / view.scale();
        double depth = half * DEPTH_SHARE;
        boolean panel = colours.isEmpty();
        marks.box(Style.area(ink, panel ? Ink.AMBER : Ink.PAPER, 0.35), at, -depth, -half, depth, half);
        double step = 2 * half / Math.max(1, colours.size());
        for (int i = 0; i < colours.size(); i++) {
            if (colours.get(i) != Ink.PAPER) {
                marks.box(Style.area(ink, colours.get(i), 0.15), at, -depth, -half + i * step, depth * 0.1, -half + (i + 1) * step);
            }
        }
    }

    /** Returns the colours that a unit shows, from the lowest sector up. */
    private static List<Ink> colours(LightUnit unit) {
        List<Ink> inks = new ArrayList<>();
        for (Transition transition : unit.getTransitions()) {
            if (inks.isEmpty()) {
                inks.add(ink(transition.getBelowColour()));
            }
            inks.add(ink(transition.getAboveColour()));
        }
        return inks;
    }

    private static Ink ink(LightColour colour) {
        return switch (colour) {
            case WHITE -> Ink.WHITE;
            case RED -> Ink.RED;
            case GREEN -> Ink.GREEN;
            case AMBER -> Ink.AMBER;
            case NONE -> Ink.TEXT;
        };
    }

    /** Draws a ring around a selected unit. */
    public static List<Mark> ring(PlanContext context, LightUnit unit) {
        Marks marks = new Marks(unit.getId());
        AidMarks.place(context, unit).ifPresent(at -> ring(marks, context.diagram(), at));
        return marks.list();
    }

    private static void ring(Marks marks, Diagram diagram, ScenePoint at) {
        double radiusMm = (halfPx(diagram.view()) + 4) / diagram.fonts().pxPerMm();
        marks.disc(at, radiusMm, Style.line(Ink.WHEELS, 0.5));
    }
}
