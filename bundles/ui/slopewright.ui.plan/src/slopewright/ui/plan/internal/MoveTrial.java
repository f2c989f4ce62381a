package slopewright.ui.plan.internal;

import java.util.Collection;
import java.util.List;
import java.util.Optional;

import slopewright.edit.MoveAid;
import slopewright.edit.MoveUnits;
import slopewright.edit.RecordedEdit;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.Attempt;
import slopewright.evaluation.TrialCopies;
import slopewright.model.ApproachAid;
import slopewright.model.LightUnit;
import slopewright.siting.Siting;

/**
 * Tries out what moving light units would give, on a copy and by the same edit that dropping them makes, against everything that the
 * evaluation of the document knows to stand there, so that what is shown is what a check says after the drop.
 */
public final class MoveTrial {

    private final Attempt<AidEvaluation> evaluation;
    private final ApproachAid copy;
    private final List<LightUnit> moved;
    private final boolean whole;
    private final boolean takenLeft;

    /**
     * Prepares trials.
     *
     * @param evaluation the aid as it stands, or why it cannot be evaluated
     * @param aid        the aid
     * @param units      the units of it that move
     * @param takenLeft  whether they were taken by a unit on the left of the centre line
     */
    public MoveTrial(Attempt<AidEvaluation> evaluation, ApproachAid aid, Collection<LightUnit> units, boolean takenLeft) {
        this.evaluation = evaluation;
        this.takenLeft = takenLeft;
        copy = TrialCopies.of(aid);
        moved = units.stream().map(unit -> copy.getUnits().get(aid.getUnits().indexOf(unit))).toList();
        whole = units.size() > 1 && units.size() == aid.getUnits().size();
    }

    /** Returns how the rule set lays the aid out, empty where it can't. */
    public Optional<Siting> solved() {
        return evaluation.then(AidEvaluation::solved).value();
    }

    /**
     * Tries a move out.
     *
     * @param alongM metres in the landing direction
     * @param rightM metres to the right of it
     * @return what it would give, or why nothing can be evaluated
     */
    public Attempt<TrialFigures> at(double alongM, double rightM) {
        return evaluation.then(now -> Attempt.success(moved(now, alongM, rightM)));
    }

    private TrialFigures moved(AidEvaluation now, double alongM, double rightM) {
        RecordedEdit move = whole ? MoveAid.by(copy, alongM, rightM, takenLeft) : MoveUnits.by(moved, alongM, rightM);
        move.execute();
        try {
            return TrialFigures.of(now.propose(copy));
        } finally {
            move.undo();
        }
    }
}
