package slopewright.evaluation.remedy;

import java.util.Optional;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.Attempt;
import slopewright.evaluation.landing.ClearSector;
import slopewright.evaluation.landing.LandingDirections;
import slopewright.evaluation.landing.SettableSlopes;
import slopewright.messages.Message;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.model.ApproachDirection;

/** Names the nearest landing direction that is clear, where one at a helipad is not; whole degrees of slope are tried. */
public final class OtherDirection {
    private static final double WHOLE_DEG = 1;

    private OtherDirection() {
    }

    /**
     * Looks for it.
     *
     * @param evaluation the evaluation of an aid
     * @return what helps, or that no direction does; empty at a runway, or where nobody can say
     */
    public static Optional<Message> of(AidEvaluation evaluation) {
        if (!(evaluation.host() instanceof ApproachDirection)) {
            return Optional.empty();
        }
        return Attempt.of(() -> advice(LandingDirections.of(evaluation, SettableSlopes.of(evaluation, WHOLE_DEG)),
                evaluation.frame().orThrow().bearingDeg())).value();
    }

    private static Message advice(LandingDirections all, double ownDeg) {
        Optional<ClearSector> nearest = all.nearestSector(ownDeg);
        if (nearest.isEmpty()) {
            return Message.of("remedy.no-direction");
        }
        ClearSector sector = nearest.get();
        return sector.turnDeg(ownDeg) == 0 ? Message.of(sector.clearToDeg().isPresent() ? "remedy.direction-between"
                : "remedy.direction-steeper", sector.slopes())
                : Message.of("remedy.direction", Words.quantity(sector.nearestDeg(ownDeg), Notation.BEARING), sector.message(0));
    }
}
