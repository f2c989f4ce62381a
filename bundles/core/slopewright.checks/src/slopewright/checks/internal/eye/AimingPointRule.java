package slopewright.checks.internal.eye;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.geometry.Angles;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.RunwayEnd;
import slopewright.siting.Siting;
import slopewright.standards.AimingPointTable;
import slopewright.standards.CitedValue;

/** The aiming point marking begins where the visual slope begins. A warning: the paint can be moved, and nothing is struck meanwhile. */
public final class AimingPointRule extends AidRule {
    /** Made by the service loader. */
    public AimingPointRule() {
        super("AIM-01", Severity.WARNING);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        RunwayEnd end = facts.end();
        AimingPointTable table = facts.rules().aimingPoint()
                .orElseThrow(() -> Stop.notApplicable(Message.of("AIM-01.none-given", facts.rules().descriptor().name())));
        double marking = AidFacts.need(end.getAimingPointDistanceM(), Message.of("missing.aiming-point"));
        CitedValue tolerance = facts.common("siting.eye-height-tolerance-m");
        Siting laid = facts.laid();
        double allowed = tolerance.value() / Angles.tanDeg(laid.slopeDeg());
        outcomes.about(facts.aid()).measured(Measure.within(marking, laid.distanceM(), allowed, "m")).citing(table.citation())
                .resting(tolerance)
                .step("along-of-height", Words.m(tolerance.value()), Words.deg(laid.slopeDeg()), Words.m(allowed))
                .saying("compared", Words.m(marking), Words.m(laid.distanceM()), Words.m(allowed)).advising("repaint").add();
    }
}
