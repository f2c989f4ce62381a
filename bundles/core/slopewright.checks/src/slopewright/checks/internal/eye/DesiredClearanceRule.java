package slopewright.checks.internal.eye;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.messages.Words;
import slopewright.model.ClearanceChoice;

/** The wheel clearance that is provided where practicable. A warning: an aeronautical study may accept less, down to the minimum. */
public final class DesiredClearanceRule extends ClearanceRule {
    /** Made by the service loader. */
    public DesiredClearanceRule() {
        super("WHEEL-01", Severity.WARNING);
    }

    @Override
    void check(AidFacts facts, Case one, OutcomeCollector outcomes) {
        double desired = one.band().desiredM();
        double clearance = one.clearance().clearanceM();
        boolean chosen = facts.aid().getClearance() != ClearanceChoice.DESIRED || facts.host().getGlidePath() != null;
        withStep(entry(facts, outcomes), facts.laid(), one.clearance()).measured(Measure.atLeast(clearance, desired, "m"))
                .citing(one.table().desired()).saying("compared", one.name(), Words.m(clearance), Words.m(desired))
                .advising(chosen ? "chosen" : "study", move(facts, desired - clearance)).add();
    }
}
