package slopewright.ui.plan.internal.figures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.Style;
import slopewright.model.ApproachAid;
import slopewright.model.LightUnit;
import slopewright.model.Runway;
import slopewright.model.util.Projects;
import slopewright.siting.site.PlanAxis;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.Readings;
import slopewright.ui.plan.internal.places.PlanPlaces;

/**
 * Dimensions of the chosen aid, which follow it: from the threshold to each bar, and across from the runway edge to the units and from
 * unit to unit. From afar there are none.
 */
public final class DimensionMarks {

    private static final double TEXT_MM = 1.9;
    private static final double TICK_PX = 4;
    private static final double BESIDE_PX = 16;
    private static final double BEFORE_PX = 76;
    private static final double LEAST_PX = 30;
    private static final double LEAST_SCALE = 1.5;
    private static final Style LINE = Style.line(Ink.DIMENSION, 0.15);

    private final PlanAxis axis;
    private final Marks marks;
    private final double px;
    private final double half;

    private DimensionMarks(PlanContext context, ApproachAid aid, PlanAxis axis) {
        this.axis = axis;
        this.marks = new Marks(aid.getId());
        this.px = 1 / context.diagram().view().scale();
        this.half = Projects.runway(aid).map(Runway::getWidthM).orElse(0.0) / 2;
    }

    /** Draws the dimensions of an aid, nothing unless it is the chosen one and its units can be told apart. */
    public static List<Mark> of(PlanContext context, ApproachAid aid) {
        Optional<PlanAxis> axis = Projects.host(aid).flatMap(context::axis);
        boolean chosen = context.document().viewState().aid().filter(viewed -> viewed == aid).isPresent();
        if (axis.isEmpty() || !chosen || AidMarks.isFar(context, aid) || context.diagram().view().scale() < LEAST_SCALE) {
            return List.of();
        }
        DimensionMarks drawing = new DimensionMarks(context, aid, axis.get());
        rows(aid).forEach(drawing::row);
        return drawing.marks.list();
    }

    /** Returns the units of each bar on each side, from the runway outward. */
    private static List<List<LightUnit>> rows(ApproachAid aid) {
        Map<String, List<LightUnit>> rows = new TreeMap<>();
        for (LightUnit unit : aid.getUnits()) {
            if (unit.getAlongM() != null && unit.getRightM() != null) {
                rows.computeIfAbsent(unit.getBar() + (unit.getRightM() < 0 ? "L" : "R"), key -> new ArrayList<>()).add(unit);
            }
        }
        rows.values().forEach(row -> row.sort(Comparator.comparingDouble(unit -> Math.abs(unit.getRightM()))));
        return List.copyOf(rows.values());
    }

    private void row(List<LightUnit> row) {
        double along = row.get(0).getAlongM();
        double sign = row.get(0).getRightM() < 0 ? -1 : 1;
        double off = -sign * (half + BESIDE_PX * px);
        piece(0, off, along, off);
        double at = row.stream().mapToDouble(LightUnit::getAlongM).min().orElse(along) - BEFORE_PX * px;
        double from = sign * half;
        for (LightUnit unit : row) {
            piece(at, from, at, unit.getRightM());
            from = unit.getRightM();
        }
    }

    /** Draws one dimension with its ticks and its length, nothing where it would be too short to read. */
    private void piece(double fromAlong, double fromRight, double toAlong, double toRight) {
        double length = Math.hypot(toAlong - fromAlong, toRight - fromRight);
        if (length < LEAST_PX * px) {
            return;
        }
        boolean isAlong = fromRight == toRight;
        double tickAlong = isAlong ? 0 : TICK_PX * px;
        double tickRight = isAlong ? TICK_PX * px : 0;
        marks.stroke(LINE, axis, fromAlong, fromRight, toAlong, toRight);
        marks.stroke(LINE, axis, fromAlong - tickAlong, fromRight - tickRight, fromAlong + tickAlong, fromRight + tickRight);
        marks.stroke(LINE, axis, toAlong - tickAlong, toRight - tickRight, toAlong + tickAlong, toRight + tickRight);
        marks.text(PlanPlaces.point(axis, (fromAlong + toAlong) / 2, (fromRight + toRight) / 2), Readings.length(length),
                Mark.Anchor.MIDDLE, TEXT_MM, 0, Ink.DIMENSION);
    }
}
