package slopewright.checks.internal.field;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.evaluation.portable.PlannedDescent;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachAid;

/**
 * What the hand sets at the unit is the slope of the planned descent, to the accuracy with which it is set. Severity fail: the pilot flies
 * the planned descent and sees another path.
 */
public final class PlannedDescentRule extends AidRule {
    /** Made by the service loader. */
    public PlannedDescentRule() {
        super("FIELD-04", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        ApproachAid aid = facts.aid();
        boolean speed = aid.getGroundSpeedKt() != null || aid.getAirSpeedKt() != null;
        if (!speed && aid.getDescentFtmin() == null) {
            throw Stop.notApplicable(Message.of("FIELD-04.none-planned"));
        }
        AidFacts.need(speed ? aid : null, Message.of("missing.speed"));
        AidFacts.need(aid.getDescentFtmin(), Message.of("missing.descent"));
        PlannedDescent found = PlannedDescent.of(facts.evaluation()).orElseThrow();
        double allowed = found.allowance().accuracy().value();
        outcomes.about(aid).measured(Measure.atMost(Math.abs(found.offMin()), allowed, "min")).resting(found.allowance().accuracy())
                .saying(found.offMin() > 0 ? "steeper" : "flatter", Words.degrees(found.setDeg()), Words.degrees(Math.abs(found.offMin())
                        / 60), Words.degrees(found.plannedDeg()), Words.min(allowed)).advising("set").add();
    }
}
