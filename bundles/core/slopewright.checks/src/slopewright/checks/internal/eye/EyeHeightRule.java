package slopewright.checks.internal.eye;

import java.util.List;
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
import slopewright.standards.Citation;

/** The eye height over the threshold is the one that the aeroplanes need. */
public final class EyeHeightRule extends AidRule {

    /** Made by the service loader. */
    public EyeHeightRule() {
        super("EYE-01", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        if (!facts.atRunway()) {
            return;
        }
        if (facts.host().getGlidePath() != null && facts.indicator().has(Trait.ROW)) {
            findings.notApplicable(facts.aid(),
                    "Beside a glide path the wheel clearance decides (WHEEL-02), not an eye height to be reached.");
            return;
        }
        Siting laid = facts.laid();
        Siting solved = facts.solvedAtLens();
        double target = solved.mehtM();
        double tan = Angles.tanDeg(laid.lowestOnSlopeDeg());
        List<Citation> sources = solved.citations().stream()
                .filter(use -> use.name().contains("clearance") || use.name().contains("crossing-height")
                || use.name().contains("allowance"))
                .map(Siting.CitedUse::citation).toList();
        Measure measure = Measure.atLeast(laid.mehtM(), target, "m");
        compare(findings, facts.aid(), measure, sources.isEmpty() ? Optional.empty() : Optional.of(OutcomeCollector.weakest(sources)),
                "The eye height over the threshold (MEHT) is " + Words.mFt(laid.mehtM()) + " on " + Words.deg(laid.lowestOnSlopeDeg())
                        + "; "
                        + Words.mFt(target) + " are needed.", "Move the indicator " + Words.m((target - laid.mehtM()) / tan)
                                + " farther from the threshold, or choose a smaller clearance that a study accepts.", severity());
    }
}
