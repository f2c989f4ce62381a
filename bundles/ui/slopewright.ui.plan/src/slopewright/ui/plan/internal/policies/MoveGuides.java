package slopewright.ui.plan.internal.policies;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.Style;
import slopewright.evaluation.Attempt;
import slopewright.model.ApproachAid;
import slopewright.model.LightUnit;
import slopewright.model.Runway;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;
import slopewright.siting.site.PlanAxis;
import slopewright.ui.diagram.figures.ReadoutFigure.Line;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.Readings;
import slopewright.ui.plan.internal.TrialFigures;
import slopewright.ui.plan.internal.figures.AidMarks;
import slopewright.ui.plan.internal.figures.Marks;
import slopewright.ui.plan.internal.figures.UnitMarks;
import slopewright.ui.plan.internal.grid.UnitSnaps;
import slopewright.ui.plan.internal.places.PlanPlaces;

/** What is shown while light units are moved: where they would stand, dimensions, lines of what they snap to, and live values. */
final class MoveGuides {

    private static final double TICK_PX = 5;
    private static final double BESIDE_PX = 14;

    private final PlanContext context;
    private final ApproachAid aid;
    private final MoveFeedback feedback;

    MoveGuides(PlanContext context, ApproachAid aid) {
        this.context = context;
        this.aid = aid;
        this.feedback = new MoveFeedback(context.diagram());
    }

    void erase() {
        feedback.erase();
    }

    void show(PlanAxis axis, LightUnit lead, List<LightUnit> moved, MoveUnitsPolicy.Shift shift, Predicate<LightUnit> mirrored,
            Attempt<TrialFigures> result, UnitSnaps snaps, List<Line> rules) {
        double along = MoveUnitsPolicy.at(lead.getAlongM()) + shift.alongM();
        double right = MoveUnitsPolicy.at(lead.getRightM()) + shift.rightM();
        Marks marks = new Marks(aid.getId());
        result.then(TrialFigures::siting).value().flatMap(Siting::surface)
                .ifPresent(surface -> AidMarks.surface(axis, surface.geometry(), "").forEach(marks::add));
        dimensions(marks, axis, along, right, shift);
        for (LightUnit unit : moved) {
            double across = MoveUnitsPolicy.at(unit.getRightM()) + (mirrored.test(unit) ? -shift.rightM() : shift.rightM());
            UnitMarks.ghost(marks, context.diagram().view(), axis, MoveUnitsPolicy.at(unit.getAlongM()) + shift.alongM(), across,
                    Ink.WHEELS);
        }
        List<Line> said = new ArrayList<>(lines(shift, result, snaps, right));
        said.addAll(rules);
        feedback.show(marks.list(), said, PlanPlaces.point(axis, along, right));
    }

    private void dimensions(Marks marks, PlanAxis axis, double along, double right, MoveUnitsPolicy.Shift shift) {
        double px = 1 / context.diagram().view().scale();
        double half = Projects.runway(aid).map(Runway::getWidthM).orElse(0.0) / 2;
        double off = (right < 0 ? 1 : -1) * (half + BESIDE_PX * px);
        double tick = TICK_PX * px;
        Style thin = Style.line(Ink.WHEELS, 0.25);
        marks.stroke(thin, axis, 0, off, along, off);
        marks.stroke(thin, axis, 0, off - tick, 0, off + tick);
        marks.stroke(thin, axis, along, off - tick, along, off + tick);
        marks.text(PlanPlaces.point(axis, along / 2, off), Readings.length(along), Mark.Anchor.MIDDLE, 2, 0, Ink.WHEELS);
        if (shift.rightM() != 0) {
            double ahead = along - 2 * BESIDE_PX * px;
            marks.stroke(thin, axis, ahead, 0, ahead, right);
            marks.stroke(thin, axis, ahead - tick, 0, ahead + tick, 0);
            marks.stroke(thin, axis, ahead - tick, right, ahead + tick, right);
            marks.text(PlanPlaces.point(axis, ahead, right / 2), Readings.length(Math.abs(right)), Mark.Anchor.MIDDLE, 2, 0, Ink.WHEELS);
        }
        Style snapped = Style.dashed(Ink.GREEN, 0.4);
        double reach = 4 * Math.max(half, Math.abs(right));
        shift.along().ifPresent(target -> marks.stroke(snapped, axis, target.valueM(), -reach, target.valueM(), reach));
        double far = 300 * px;
        shift.right().ifPresent(target -> marks.stroke(snapped, axis, along - far, target.valueM(), along + far, target.valueM()));
    }

    private static List<Line> lines(MoveUnitsPolicy.Shift shift, Attempt<TrialFigures> result, UnitSnaps snaps, double rightM) {
        List<Line> lines = new ArrayList<>();
        lines.add(Line.of(Readings.shifts(shift.alongM(), shift.rightM())));
        shift.along().ifPresent(target -> lines.add(Line.of("⌖ " + target.name())));
        shift.right().ifPresent(target -> lines.add(Line.of("⌖ " + target.name())));
        lines.addAll(Readings.of(result));
        lines.add(Line.of(Readings.side(rightM)));
        Optional<Double> gap = snaps.gapM(rightM);
        gap.ifPresent(metres -> lines.add(Line.of(snaps.spacings().isEmpty() ? Messages.get("move.gap", Readings.length(metres))
                : Messages.get("move.gap-of", Readings.length(metres), Readings.length(snaps.spacings().get(0))))));
        return lines;
    }
}
