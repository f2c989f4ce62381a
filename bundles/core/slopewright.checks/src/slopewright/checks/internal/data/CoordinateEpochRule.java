package slopewright.checks.internal.data;

import java.util.List;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Message;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.siting.site.CoordinateBasis;

/**
 * Coordinates on WGS 84 hold for a day, since the ground moves there by two to seven centimetres a year; without their epoch whoever sets
 * out from them is off by what the plate moved since. A reference that is fixed to a plate, a country or local marks needs none, and
 * neither does a portable unit, which is put up beside what it serves. A warning: a whole site moves together, so no distance of it
 * changes.
 */
public final class CoordinateEpochRule extends ProjectRule {
    /** Made by the service loader. */
    public CoordinateEpochRule() {
        super("DATA-67", Severity.WARNING);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        Aerodrome aerodrome = evaluation.project().getAerodrome();
        boolean setOut = evaluation.aids().stream().anyMatch(aid -> !Boolean.TRUE.equals(aid.aid().getPortable()));
        if (aerodrome != null && setOut) {
            AidRule.guarded(aerodrome, outcomes, () -> check(aerodrome, outcomes));
        }
    }

    private static void check(Aerodrome aerodrome, OutcomeCollector outcomes) {
        CoordinateBasis basis = CoordinateBasis.of(aerodrome);
        if (basis.epoch().isPresent()) {
            outcomes.about(aerodrome).met(true).saying("named", Words.name(basis.reference()), Words.quantity(basis.epoch().get(),
                    Notation.YEAR)).add();
        } else if (basis.movesWithTime()) {
            List<Message> missing = List.of(Message.of("missing.coordinate-epoch"));
            outcomes.notEvaluated(aerodrome, missing, Message.of("DATA-67.moves", Words.name(basis.reference())));
        } else {
            outcomes.notApplicable(aerodrome, Message.of("DATA-67.fixed", Words.name(basis.reference())));
        }
    }
}
