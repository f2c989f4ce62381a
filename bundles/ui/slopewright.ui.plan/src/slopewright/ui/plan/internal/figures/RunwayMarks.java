package slopewright.ui.plan.internal.figures;

import java.util.List;
import java.util.Optional;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.siting.site.PlanAxis;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.places.PlanPlaces;

/** A runway: strip, pavement and markings. Markings are drawn for the eye; their sizes are usual ones, not checked against a standard. */
public final class RunwayMarks {

    /** Width where none was entered, metres. */
    public static final double UNKNOWN_WIDTH_M = 30;

    private static final double UNKNOWN_LENGTH_M = 1000;
    private static final double STRIPE_START_M = 6;
    private static final double STRIPE_LENGTH_M = 30;
    private static final double DESIGNATOR_AT_M = 48;
    private static final double AIMING_POINT_LENGTH_M = 45;
    private static final double MARKINGS_FROM_SCALE = 0.12;
    private static final double DESIGNATOR_FROM_SCALE = 1.2;

    private final PlanContext context;
    private final Runway runway;
    private final double scale;
    private final Marks marks;

    private RunwayMarks(PlanContext context, Runway runway) {
        this.context = context;
        this.runway = runway;
        this.scale = context.diagram().view().scale();
        this.marks = new Marks(runway.getId());
    }

    /** Draws a runway, nothing where none of its ends has a place. */
    public static List<Mark> of(PlanContext context, Runway runway) {
        RunwayMarks drawing = new RunwayMarks(context, runway);
        drawing.draw();
        return drawing.marks.list();
    }

    /** Returns the width of a runway or what is drawn instead, metres. */
    public static double widthM(Runway runway) {
        return runway.getWidthM() == null ? UNKNOWN_WIDTH_M : runway.getWidthM();
    }

    /** Returns the length between the ends of the pavement, as entered or between the thresholds, metres. */
    public static double lengthM(PlanContext context, Runway runway) {
        if (runway.getLengthM() != null) {
            return runway.getLengthM();
        }
        List<PlanAxis> axes = runway.getEnds().stream().flatMap(end -> context.drawn(end).stream()).toList();
        double displaced = runway.getEnds().stream().mapToDouble(RunwayMarks::displacedM).sum();
        return axes.size() == 2 ? axes.get(0).origin().distanceM(axes.get(1).origin()) + displaced : UNKNOWN_LENGTH_M;
    }

    /** Returns how far the threshold lies from the end of the pavement, metres. */
    public static double displacedM(RunwayEnd end) {
        return end.getDisplacedThresholdM() == null ? 0 : end.getDisplacedThresholdM();
    }

    private void draw() {
        Optional<RunwayEnd> first = runway.getEnds().stream().filter(end -> context.drawn(end).isPresent()).findFirst();
        if (first.isEmpty()) {
            return;
        }
        PlanAxis axis = context.drawn(first.get()).orElseThrow();
        double from = -displacedM(first.get());
        double length = lengthM(context, runway);
        double half = widthM(runway) / 2;
        if (runway.getStripWidthM() != null && runway.getStripLengthM() != null) {
            double over = (runway.getStripLengthM() - length) / 2;
            double side = runway.getStripWidthM() / 2;
            marks.box(Style.dashed(Ink.TAXIWAY, 0.18), axis, from - over, -side, from + length + over, side);
        }
        marks.box(Style.area(Ink.DIMENSION, Ink.PAVEMENT, 0.25), axis, from, -half, from + length, half);
        if (scale < MARKINGS_FROM_SCALE) {
            marks.stroke(Style.line(Ink.MARKING, 0.25), axis, from + length * 0.05, 0, from + length * 0.95, 0);
            return;
        }
        centreLine(axis, from, length);
        for (RunwayEnd end : runway.getEnds()) {
            context.drawn(end).ifPresent(own -> end(end, own, half));
        }
    }

    private void centreLine(PlanAxis axis, double from, double length) {
        Style style = Style.line(Ink.MARKING, Math.max(0.25, Math.min(0.9 * scale / 3.5, 3)));
        for (double at = from + 75; at + 30 < from + length - 60; at += 50) {
            marks.stroke(style, axis, at, 0, at + 30, 0);
        }
    }

    private void end(RunwayEnd end, PlanAxis axis, double half) {
        if (!Boolean.FALSE.equals(runway.getPaved())) {
            stripes(axis, half);
            if (scale > DESIGNATOR_FROM_SCALE && end.getDesignator() != null) {
                Style stroke = Style.line(Ink.MARKING, Math.min(scale * 0.9 / 3.5, 4));
                StrokeDigits.paint(marks, stroke, axis, end.getDesignator(), DESIGNATOR_AT_M);
            }
            aimingPoint(end, axis, half);
        }
        double displaced = displacedM(end);
        if (displaced > 0) {
            marks.stroke(Style.line(Ink.MARKING, 0.5), axis, 0, -half, 0, half);
            arrows(axis, displaced, half);
        }
    }

    private void stripes(PlanAxis axis, double half) {
        int pairs = Math.max(2, (int) Math.round(half / 5.6));
        double step = (half - 3) / pairs;
        for (int i = 0; i < pairs; i++) {
            for (int side : new int[] {-1, 1}) {
                double inner = side * (1.5 + i * step + step * 0.15);
                double outer = side * (1.5 + i * step + step * 0.75);
                marks.box(Style.fill(Ink.MARKING), axis, STRIPE_START_M, inner, STRIPE_START_M + STRIPE_LENGTH_M, outer);
            }
        }
    }

    private void aimingPoint(RunwayEnd end, PlanAxis axis, double half) {
        if (end.getAimingPointDistanceM() == null) {
            return;
        }
        double at = end.getAimingPointDistanceM();
        for (int side : new int[] {-1, 1}) {
            marks.box(Style.fill(Ink.MARKING), axis, at, side * half * 0.36, at + AIMING_POINT_LENGTH_M, side * half * 0.7);
        }
    }

    /** Arrows that lead to a displaced threshold. */
    private void arrows(PlanAxis axis, double displaced, double half) {
        Style style = Style.line(Ink.MARKING, 0.4);
        double wing = half * 0.3;
        for (double tip = -8; tip - 30 > -displaced; tip -= 60) {
            marks.stroke(style, axis, tip - 30, 0, tip, 0);
            marks.stroke(style, axis, tip - 12, -wing, tip, 0, tip - 12, wing);
        }
    }

    /** Returns the sign before an end that names it, for people who do not stand on its head. */
    public static List<Mark> sign(PlanContext context, RunwayEnd end) {
        Marks marks = new Marks(end.getId());
        context.drawn(end).ifPresent(axis -> {
            double before = displacedM(end) + 26 / context.diagram().view().scale();
            ScenePoint at = PlanPlaces.point(axis, -before, 0);
            marks.text(at, end.getDesignator() == null ? "?" : end.getDesignator(), Mark.Anchor.MIDDLE, 3.4, 0, Ink.TEXT);
        });
        return marks.list();
    }
}
