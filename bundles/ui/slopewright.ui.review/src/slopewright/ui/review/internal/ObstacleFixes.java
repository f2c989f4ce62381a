package slopewright.ui.review.internal;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EAttribute;

import slopewright.edit.Compound;
import slopewright.edit.EditException;
import slopewright.edit.MoveAid;
import slopewright.edit.RecordedEdit;
import slopewright.edit.ResolveAid;
import slopewright.edit.SetAttribute;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.remedy.Remedies;
import slopewright.evaluation.remedy.Remedy;
import slopewright.geometry.FramePoint;
import slopewright.geometry.Penetration;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.ApproachAid;
import slopewright.model.Place;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;
import slopewright.siting.site.SiteFrame;
import slopewright.ui.MessageTexts;

/** Edits that carry out the computed remedies against a penetrated obstacle surface. */
public final class ObstacleFixes {

    private static final double STEPS_PER_DEG = 100;
    private static final double BEAM_STEPS_PER_DEG = 10;

    private ObstacleFixes() {
    }

    /**
     * Makes the edit of one remedy.
     *
     * @param evaluation the aid whose obstacle surface is penetrated, as it stands
     * @param kind       the remedy
     * @throws EditException   where this remedy does not help or is none for an edit; the message says why
     * @throws SitingException where something is missing
     */
    public static RecordedEdit edit(AidEvaluation evaluation, Remedy.Kind kind) {
        ApproachAid aid = evaluation.aid();
        Remedy remedy = Remedies.of(evaluation).stream().filter(found -> found.kind() == kind).findFirst()
                .orElseThrow(() -> new EditException(Messages.get("fix.nothingPenetrates")));
        double amount = remedy.amount().orElseThrow(() -> new EditException(MessageTexts.of(remedy.message())));
        return switch (kind) {
            case RAISE_SLOPE -> Compound.of(Messages.get("edit.raiseSlope"), List.of(
                    SetAttribute.of(aid, Literals.APPROACH_AID__SLOPE_DEG, Math.ceil(amount * STEPS_PER_DEG) / STEPS_PER_DEG),
                    ResolveAid.of(aid, evaluation.rules())));
            case TURN_AXIS -> SetAttribute.of(aid, Literals.APPROACH_AID__AXIS_TURN_DEG, axisTurnDeg(aid, amount));
            case MOVE_UPWIND_UNTIL_CLEAR, MOVE_UPWIND_BY_CROSSING_HEIGHT -> MoveAid.by(aid, Math.ceil(amount), 0);
            case NARROW_BEAM -> narrowed(evaluation, amount);
            case DISPLACE_THRESHOLD -> displaced(aid, evaluation.frame().orThrow(), Math.ceil(amount));
        };
    }

    /** The beam is cut on the side on which the governing obstacle stands, a tenth of a degree short of it. */
    private static RecordedEdit narrowed(AidEvaluation evaluation, double amountDeg) {
        ApproachAid aid = evaluation.aid();
        SurfaceComparison comparison = evaluation.obstacles().orThrow();
        ProtectionSurface surface = comparison.surface();
        Penetration worst = comparison.governingUnshielded()
                .orElseThrow(() -> new EditException(Messages.get("fix.nothingPenetrates"))).worst();
        boolean left = surface.offsetM(worst.point().alongM(), worst.point().rightM()) < 0;
        double limit = Math.ceil(amountDeg * BEAM_STEPS_PER_DEG - 1) / BEAM_STEPS_PER_DEG;
        return left ? SetAttribute.of(aid, Literals.APPROACH_AID__BEAM_LEFT_LIMIT_DEG, -limit)
                : SetAttribute.of(aid, Literals.APPROACH_AID__BEAM_RIGHT_LIMIT_DEG, limit);
    }

    /** The threshold moves in the landing direction and the units, which stand relative to it, with it. */
    private static RecordedEdit displaced(ApproachAid aid, SiteFrame frame, double byM) {
        if (!(Projects.host(aid).orElse(null) instanceof RunwayEnd end)) {
            throw new EditException(Messages.get("fix.noThreshold"));
        }
        List<RecordedEdit> parts = new ArrayList<>();
        double before = end.getDisplacedThresholdM() == null ? 0 : end.getDisplacedThresholdM();
        parts.add(SetAttribute.of(end, Literals.RUNWAY_END__DISPLACED_THRESHOLD_M, before + byM));
        if (end.getLandingDistanceM() != null) {
            parts.add(SetAttribute.of(end, Literals.RUNWAY_END__LANDING_DISTANCE_M, end.getLandingDistanceM() - byM));
        }
        Place old = end.getThreshold();
        Place moved = SlopewrightFactory.eINSTANCE.createPlace();
        frame.fromFrame(new FramePoint(byM, 0, 0), moved);
        for (EAttribute part : List.of(Literals.PLACE__LATITUDE_DEG, Literals.PLACE__LONGITUDE_DEG, Literals.PLACE__EAST_M,
                Literals.PLACE__NORTH_M)) {
            if (old != null && old.eGet(part) != null && moved.eGet(part) != null) {
                parts.add(SetAttribute.of(old, part, moved.eGet(part)));
            }
        }
        return Compound.of(Messages.get("edit.displaceThreshold"), parts);
    }

    private static double axisTurnDeg(ApproachAid aid, double byDeg) {
        double now = aid.getAxisTurnDeg() == null ? 0 : aid.getAxisTurnDeg();
        double turn = (now + byDeg) * STEPS_PER_DEG;
        return (byDeg > 0 ? Math.ceil(turn) : Math.floor(turn)) / STEPS_PER_DEG;
    }
}
