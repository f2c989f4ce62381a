package slopewright.checks.internal.eye;

import java.util.Optional;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Words;
import slopewright.geometry.Angles;
import slopewright.siting.Siting;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** The distance from the threshold against the one that is solved for the lens level where the units stand. */
public final class DistanceRule extends AidRule {

    /** Made by the service loader. */
    public DistanceRule() {
        super("DIST-01", Severity.WARNING);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        if (!facts.atRunway()) {
            return;
        }
        if (facts.host().getGlidePath() != null && facts.indicator().has(Trait.ROW)) {
            findings.notApplicable(facts.aid(), "Beside a glide path the position is compared with the glide path (ILS-03).");
            return;
        }
        CitedValue tolerance = facts.common("siting.eye-height-tolerance-m");
        Siting laid = facts.laid();
        Siting solved = facts.solvedAtLens();
        double tan = Angles.tanDeg(laid.lowestOnSlopeDeg());
        double allowed = tolerance.value() / tan;
        double off = laid.distanceM() - solved.distanceM();
        boolean farther = off > 0;
        compare(findings, facts.aid(), Measure.within(laid.distanceM(), solved.distanceM(), allowed,
                "m"),
                Optional.of(tolerance.citation()), "It stands " + Words.m(laid.distanceM()) + " from the threshold; "
                        + Words.m(solved.distanceM())
                        + " are solved for this lens level. " + Words.m(Math.abs(off)) + " along are " + Words.m(Math.abs(off) * tan)
                        + " of eye height, of which " + Words.m(tolerance.value()) + " are allowed.",
                farther ? "It gives more clearance than needed and shortens the landing distance behind the path; move it back, or state"
                + " why."
                        : "It gives less clearance than needed; move it farther from the threshold.",
                farther ? Severity.NOTE : severity());
    }
}
