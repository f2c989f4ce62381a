package slopewright.checks.internal.eye;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.Words;
import slopewright.geometry.Angles;
import slopewright.model.util.Projects;
import slopewright.standards.Citation;

/** Where a cut clearance is given at a displaced threshold, the runway extremity still needs the desired one. */
public final class ExtremityClearanceRule extends WheelClearance {

    /** Made by the service loader. */
    public ExtremityClearanceRule() {
        super("WHEEL-03", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, Case one, Citation citation, OutcomeCollector findings) {
        Double displaced = facts.end().getDisplacedThresholdM();
        double desired = one.band().desiredM();
        double atThreshold = facts.laid().mehtM() - one.eyeToWheelM();
        if (displaced == null || displaced == 0 || atThreshold >= desired) {
            findings.notApplicable(facts.aid(), displaced == null || displaced == 0 ? "The threshold is not displaced."
                    : Projects.label(one.group()) + " has the desired clearance over the threshold.");
            return;
        }
        double extremity = AidFacts.need(facts.end().getExtremityElevationM(), "elevation of the runway extremity")
                - AidFacts.need(facts.end().getThresholdElevationM(), "threshold elevation");
        double eye = facts.laid().mehtM() + displaced * Angles.tanDeg(facts.laid().lowestOnSlopeDeg());
        double clearance = eye - extremity - one.band().belowM();
        add(findings, facts, Measure.atLeast(clearance, desired, "m"), citation,
                "An aeroplane with an eye-to-wheel height of " + Words.m(one.band().belowM()) + ", the top of the group of "
                        + Projects.label(one.group()) + ", clears the runway extremity by " + Words.m(clearance) + "; " + Words.m(desired)
                        + " are needed there.", "Move the row farther from the threshold, or give the desired clearance at the threshold.");
    }
}
