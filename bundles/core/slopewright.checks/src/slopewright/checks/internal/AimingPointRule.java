package slopewright.checks.internal;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.geometry.Angles;
import slopewright.siting.Siting;
import slopewright.standards.AimingPointTable;
import slopewright.standards.CitedValue;

/** The aiming point marking begins where the visual slope begins. */
public final class AimingPointRule extends AidRule {

    /** Made by the service loader. */
    public AimingPointRule() {
        super("AIM-01", "Aiming point marking",
                "The aiming point marking begins at the origin of the visual slope, within what the eye height tolerance is along the"
                + " runway.",
                Severity.WARNING, Stream.concat(ROWS.stream(), T_FORMS.stream()).collect(Collectors.toUnmodifiableSet()));
    }

    @Override
    void check(AidFacts facts, Findings findings) {
        if (!facts.atRunway()) {
            return;
        }
        AimingPointTable table = facts.rules().aimingPoint()
                .orElseThrow(() -> Stop.notApplicable("Rule set " + facts.rules().key() + " gives no place of the marking."));
        double marking = AidFacts.need(facts.end().getAimingPointDistanceM(), "distance of the aiming point marking");
        CitedValue tolerance = facts.common("siting.eye-height-tolerance-m");
        Siting laid = facts.laid();
        double allowed = tolerance.value() / Angles.tanDeg(laid.slopeDeg());
        compare(findings, facts.aid(), Measure.within(SettingOut.length(marking, laid.distanceM()), laid.distanceM(), allowed, "m"),
                Findings.weakest(List.of(table.citation(), tolerance.citation())), "The marking begins " + Words.m(marking)
                        + " from the threshold, the visual slope " + Words.m(laid.distanceM()) + "; " + Words.m(allowed)
                        + " of difference are allowed.",
                "Repaint the marking at the origin of the slope.");
    }
}
