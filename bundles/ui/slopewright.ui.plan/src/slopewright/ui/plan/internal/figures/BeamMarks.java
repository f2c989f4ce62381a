package slopewright.ui.plan.internal.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.model.ApproachAid;
import slopewright.model.LightUnit;
import slopewright.model.util.Projects;
import slopewright.siting.site.PlanAxis;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.places.PlanPlaces;

/** The fans in which the units of an aid are seen, seen from above: the limits of its beam, else the beam width of its equipment. */
public final class BeamMarks {

    private static final double LENGTH_PX = 64;
    private static final double LEAST_SCALE = 1.5;
    private static final int STEPS = 6;
    private static final Style EDGE = Style.line(Ink.AXIS, 0.12);

    private BeamMarks() {
    }

    /** Draws the fans, nothing where the beam is not known or the units can't be told apart. */
    public static List<Mark> of(PlanContext context, ApproachAid aid) {
        Optional<PlanAxis> axis = Projects.host(aid).flatMap(context::axis);
        double width = aid.getEquipment() == null || aid.getEquipment().getBeamWidthDeg() == null ? 0
                : aid.getEquipment().getBeamWidthDeg() / 2;
        double left = aid.getBeamLeftLimitDeg() == null ? width : Math.abs(aid.getBeamLeftLimitDeg());
        double right = aid.getBeamRightLimitDeg() == null ? width : Math.abs(aid.getBeamRightLimitDeg());
        if (axis.isEmpty() || left + right <= 0 || AidMarks.isFar(context, aid) || context.diagram().view().scale() < LEAST_SCALE) {
            return List.of();
        }
        Marks marks = new Marks(aid.getId());
        double turn = aid.getAxisTurnDeg() == null ? 0 : aid.getAxisTurnDeg();
        for (LightUnit unit : aid.getUnits()) {
            double own = turn + (unit.getAzimuthOffsetDeg() == null ? 0 : unit.getAzimuthOffsetDeg());
            AidMarks.place(context, unit).ifPresent(at -> fan(marks, context, axis.get(), unit, -left - own, right - own));
        }
        return marks.list();
    }

    private static void fan(Marks marks, PlanContext context, PlanAxis axis, LightUnit unit, double fromDeg, double toDeg) {
        double reach = LENGTH_PX / context.diagram().view().scale();
        List<ScenePoint> ring = new ArrayList<>();
        ScenePoint lens = PlanPlaces.point(axis, unit.getAlongM(), unit.getRightM());
        ring.add(lens);
        for (int i = 0; i <= STEPS; i++) {
            double angle = Math.toRadians(fromDeg + (toDeg - fromDeg) * i / STEPS);
            ring.add(PlanPlaces.point(axis, unit.getAlongM() - reach * Math.cos(angle), unit.getRightM() + reach * Math.sin(angle)));
        }
        ring.add(lens);
        marks.line(EDGE, ring);
    }
}
