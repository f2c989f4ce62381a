package slopewright.checks.internal;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.model.ClearanceChoice;
import slopewright.model.util.Projects;
import slopewright.standards.Citation;

/** The wheel clearance that is provided where practicable. */
public final class DesiredClearanceRule extends WheelClearance {

    /** Made by the service loader. */
    public DesiredClearanceRule() {
        super("WHEEL-01", "Desired wheel clearance",
                "On the lowest on-slope signal each aeroplane group in regular use has the desired wheel clearance over the threshold.",
                Severity.WARNING);
    }

    @Override
    void check(AidFacts facts, Case one, Citation citation, Findings findings) {
        double desired = one.band().desiredM();
        double clearance = SettingOut.height(facts.laid().eyeHeightM() - one.eyeToWheelM(), desired);
        boolean chosen = facts.aid().getClearance() != ClearanceChoice.DESIRED || facts.host().getGlidePath() != null;
        add(findings, facts, Measure.atLeast(clearance, desired, "m"), citation,
                Projects.label(one.group()) + " clears the threshold by " + Words.m(clearance) + "; " + Words.m(desired) + " are desired.",
                (chosen ? "A smaller clearance was chosen: an aeronautical study must accept it" : "An aeronautical study must accept less")
                        + ", or move the row " + Words.m(moveM(facts, desired - clearance)) + " farther from the threshold.");
    }
}
