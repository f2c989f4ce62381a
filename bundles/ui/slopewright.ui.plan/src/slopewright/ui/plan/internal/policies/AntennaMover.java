package slopewright.ui.plan.internal.policies;

import java.util.List;
import java.util.Optional;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.edit.Compound;
import slopewright.edit.SetAttribute;
import slopewright.model.GlidePathAid;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.model.util.Projects;
import slopewright.siting.site.PlanAxis;
import slopewright.ui.diagram.figures.ReadoutFigure.Line;
import slopewright.ui.diagram.policies.MoveRequest;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.plan.internal.PlanContext;
import slopewright.ui.plan.internal.Readings;
import slopewright.ui.plan.internal.places.PlanPlaces;
import slopewright.ui.preferences.Preferences;

/** Moves the antenna of a glide path along its runway and across; where the path begins, and its height, stay as entered. */
public final class AntennaMover {

    private AntennaMover() {
    }

    /** Returns the mover of glide-path antennas. */
    public static Mover<GlidePathAid> get() {
        return AntennaMover::drop;
    }

    private static Optional<Drop<GlidePathAid>> drop(PlanContext context, GlidePathAid path, MoveRequest move) {
        Optional<PlanAxis> axis = Projects.host(path).flatMap(context::axis);
        if (axis.isEmpty() || path.getAntennaAlongM() == null || path.getAntennaRightM() == null) {
            return Optional.empty();
        }
        double along = rounded(path.getAntennaAlongM(), axis.get().alongM(move.byX(), move.byY()), move);
        double right = rounded(path.getAntennaRightM(), axis.get().rightM(move.byX(), move.byY()), move);
        if (along == path.getAntennaAlongM() && right == path.getAntennaRightM()) {
            return Optional.empty();
        }
        ScenePoint at = PlanPlaces.point(axis.get(), along, right);
        return Optional.of(new Drop<>(List.of(along, right), Messages.get("move.both", Readings.length(along), Readings.length(right)),
                List.of(Line.of(Messages.get("move.path-stays"))), marks -> marks.disc(at, 1.4, Style.line(Ink.WHEELS, 0.4)), at,
                found -> Compound.of("Move antenna", List.of(SetAttribute.of(found, Literals.GLIDE_PATH_AID__ANTENNA_ALONG_M, along),
                        SetAttribute.of(found, Literals.GLIDE_PATH_AID__ANTENNA_RIGHT_M, right)))));
    }

    /** A mouse goes by the step of the preferences, a key by what it says; places are kept to the millimetre. */
    private static double rounded(double stoodM, double byM, MoveRequest move) {
        double step = move.isExact() || move.isUnsnapped() ? 0.001 : Preferences.snapStepM();
        double moved = Math.abs(byM) < step / 2 ? stoodM : Math.rint((stoodM + byM) / step) * step;
        return Math.round(moved * 1e6) / 1e6;
    }
}
