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
import slopewright.siting.Siting;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/**
 * The distance from the threshold against the one that is solved for the lens level where the units stand. A warning: whether the wheels
 * clear the threshold is judged by the wheel clearance; a note where it stands farther, which costs landing distance only.
 */
public final class DistanceRule extends AidRule {
    /** Made by the service loader. */
    public DistanceRule() {
        super("DIST-01", Severity.WARNING);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        facts.end();
        if (facts.host().getGlidePath() != null && facts.indicator().has(Trait.ROW)) {
            throw Stop.notApplicable(Message.of("DIST-01.beside-glide-path"));
        }
        CitedValue tolerance = facts.common("siting.eye-height-tolerance-m");
        Siting laid = facts.laid();
        Siting solved = facts.solvedAtLens();
        double tan = Angles.tanDeg(laid.lowestOnSlopeDeg());
        double allowed = tolerance.value() / tan;
        double off = laid.distanceM() - solved.distanceM();
        boolean farther = off > 0;
        outcomes.about(facts.aid()).measured(Measure.within(laid.distanceM(), solved.distanceM(), allowed, "m")).resting(tolerance)
                .severity(farther ? Severity.NOTE : severity())
                .step("along-of-height", Words.m(tolerance.value()), Words.deg(laid.lowestOnSlopeDeg()), Words.m(allowed))
                .saying("compared", Words.m(laid.distanceM()), Words.m(solved.distanceM()), Words.m(Math.abs(off)),
                        Words.m(Math.abs(off) * tan), Words.m(tolerance.value()))
                .advising(farther ? "farther" : "nearer").add();
    }
}
