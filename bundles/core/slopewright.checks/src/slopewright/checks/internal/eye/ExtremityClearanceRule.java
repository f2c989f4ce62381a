package slopewright.checks.internal.eye;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.Stop;
import slopewright.geometry.Angles;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Siting;

/**
 * Where a cut clearance is given at a displaced threshold, the runway extremity still needs the desired one, for the largest aeroplane of
 * the group. Severity fail: the wheels strike what lies before the threshold.
 */
public final class ExtremityClearanceRule extends ClearanceRule {
    /** Made by the service loader. */
    public ExtremityClearanceRule() {
        super("WHEEL-03", Severity.FAIL);
    }

    @Override
    void check(AidFacts facts, Case one, OutcomeCollector outcomes) {
        Double displaced = facts.end().getDisplacedThresholdM();
        double desired = one.band().desiredM();
        if (displaced == null || displaced == 0) {
            throw Stop.notApplicable(Message.of("outcome.threshold-not-displaced"));
        }
        if (Measure.atLeast(one.clearance().clearanceM(), desired, "m").isMet()) {
            throw Stop.notApplicable(Message.of("WHEEL-03.desired-over-threshold", one.name()));
        }
        double extremity = AidFacts.need(facts.end().getExtremityElevationM(), Message.of("missing.extremity-elevation"))
                - AidFacts.need(facts.end().getThresholdElevationM(), Message.of("missing.threshold-elevation"));
        Siting laid = facts.laid();
        double eye = laid.mehtM() + displaced * Angles.tanDeg(laid.lowestOnSlopeDeg());
        double top = one.band().belowM();
        double clearance = eye - extremity - top;
        entry(facts, outcomes).measured(Measure.atLeast(clearance, desired, "m")).citing(one.table().desired())
                .step("extremity-eye", Words.m(laid.mehtM()), Words.m(displaced), Words.deg(laid.lowestOnSlopeDeg()), Words.m(eye))
                .step("extremity-clearance", Words.m(eye), Words.m(extremity), Words.m(top), Words.m(clearance))
                .saying("compared", Words.m(top), one.name(), Words.m(clearance), Words.m(desired)).advising("move").add();
    }
}
