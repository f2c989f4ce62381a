package slopewright.checks.internal.eye;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.Words;
import slopewright.geometry.Angles;
import slopewright.siting.Siting;
import slopewright.standards.AimingPointTable;
import slopewright.standards.CitedValue;

/** The aiming point marking begins where the visual slope begins. */
public final class AimingPointRule extends AidRule {

    /** Made by the service loader. */
    public AimingPointRule() {
        super("AIM-01", Severity.WARNING);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        if (!facts.atRunway()) {
            return;
        }
        AimingPointTable table = facts.rules().aimingPoint()
                .orElseThrow(() -> Stop.notApplicable("Rule set " + facts.rules().key() + " gives no place of the marking."));
        double marking = AidFacts.need(facts.end().getAimingPointDistanceM(), "distance of the aiming point marking");
        CitedValue tolerance = facts.common("siting.eye-height-tolerance-m");
        Siting laid = facts.laid();
        double allowed = tolerance.value() / Angles.tanDeg(laid.slopeDeg());
        compare(findings, facts.aid(), Measure.within(marking, laid.distanceM(), allowed, "m"),
                OutcomeCollector.weakest(List.of(table.citation(), tolerance.citation())), "The marking begins " + Words.m(marking)
                        + " from the threshold, the visual slope " + Words.m(laid.distanceM()) + "; " + Words.m(allowed)
                        + " of difference are allowed.",
                "Repaint the marking at the origin of the slope.");
    }
}
