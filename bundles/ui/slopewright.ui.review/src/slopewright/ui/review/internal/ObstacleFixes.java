package slopewright.ui.review.internal;

import java.util.List;

import slopewright.edit.CarryOutRemedy;
import slopewright.edit.EditException;
import slopewright.edit.RecordedEdit;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.remedy.Remedies;
import slopewright.evaluation.remedy.Remedy;
import slopewright.messages.Message;
import slopewright.siting.SitingException;
import slopewright.standards.RemedyKind;

/** Edits that carry out the computed remedies against a penetrated obstacle surface. */
public final class ObstacleFixes {

    private ObstacleFixes() {
    }

    /**
     * Makes the edit of one remedy.
     *
     * @param evaluation the aid whose obstacle surface is penetrated, as it stands
     * @param kind       the remedy
     * @throws EditException   where this remedy does not help or the rule set does not list it; the message says why
     * @throws SitingException where something is missing
     */
    public static RecordedEdit edit(AidEvaluation evaluation, RemedyKind kind) {
        List<Remedy> remedies = Remedies.of(evaluation);
        if (remedies.isEmpty() && evaluation.obstacles().value().filter(found -> found.isPenetrated()).isEmpty()) {
            throw new EditException(Message.said("plain", Messages.get("fix.nothingPenetrates")));
        }
        Remedy remedy = remedies.stream().filter(found -> found.kind() == kind).findFirst()
                .orElseThrow(() -> new EditException(Message.of("remedy.not-listed")));
        if (!remedy.helps()) {
            throw new EditException(remedy.message());
        }
        return CarryOutRemedy.of(label(kind), evaluation, remedy);
    }

    private static String label(RemedyKind kind) {
        return Messages.get(switch (kind) {
            case RAISE_SLOPE -> "edit.raiseSlope";
            case NARROW_BEAM -> "edit.narrowBeam";
            case TURN_AXIS -> "edit.turnAxis";
            case DISPLACE_THRESHOLD -> "edit.displaceThreshold";
            default -> "edit.moveUpwind";
        });
    }
}
