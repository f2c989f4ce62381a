package slopewright.checks.internal;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.geometry.Angles;
import slopewright.model.util.Projects;
import slopewright.standards.Citation;

/** Where a cut clearance is given at a displaced threshold, the runway extremity still needs the desired one. */
public final class ExtremityClearanceRule extends WheelClearance {

    /** Made by the service loader. */
    public ExtremityClearanceRule() {
        super("WHEEL-03", "Wheel clearance at the runway extremity",
                "Where the clearance at a displaced threshold is less than desired, an aeroplane at the top of the group has the desired"
                + " clearance over"
                        + " the extremity of the runway.", Severity.FAIL);
    }

    @Override
    void check(AidFacts facts, Case one, Citation citation, Findings findings) {
        Double displaced = facts.end().getDisplacedThresholdM();
        double desired = one.band().desiredM();
        double atThreshold = SettingOut.height(facts.laid().eyeHeightM() - one.eyeToWheelM(), desired);
        if (displaced == null || displaced == 0 || atThreshold >= desired) {
            findings.notApplicable(facts.aid(), displaced == null || displaced == 0 ? "The threshold is not displaced."
                    : Projects.label(one.group()) + " has the desired clearance over the threshold.");
            return;
        }
        double extremity = AidFacts.need(facts.end().getExtremityElevationM(), "elevation of the runway extremity")
                - AidFacts.need(facts.end().getThresholdElevationM(), "threshold elevation");
        double eye = facts.laid().eyeHeightM() + displaced * Angles.tanDeg(facts.laid().lowestOnSlopeDeg());
        double clearance = SettingOut.height(eye - extremity - one.band().belowM(), desired);
        add(findings, facts, Measure.atLeast(clearance, desired, "m"), citation,
                "An aeroplane with an eye-to-wheel height of " + Words.m(one.band().belowM()) + ", the top of the group of "
                        + Projects.label(one.group()) + ", clears the runway extremity by " + Words.m(clearance) + "; " + Words.m(desired)
                        + " are needed there.", "Move the row farther from the threshold, or give the desired clearance at the threshold.");
    }
}
