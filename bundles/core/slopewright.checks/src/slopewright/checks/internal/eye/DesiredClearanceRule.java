package slopewright.checks.internal.eye;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.Words;
import slopewright.model.ClearanceChoice;
import slopewright.model.util.Projects;
import slopewright.standards.Citation;

/** The wheel clearance that is provided where practicable. */
public final class DesiredClearanceRule extends WheelClearance {

    /** Made by the service loader. */
    public DesiredClearanceRule() {
        super("WHEEL-01", Severity.WARNING);
    }

    @Override
    public void check(AidFacts facts, Case one, Citation citation, OutcomeCollector findings) {
        double desired = one.band().desiredM();
        double clearance = facts.laid().mehtM() - one.eyeToWheelM();
        boolean chosen = facts.aid().getClearance() != ClearanceChoice.DESIRED || facts.host().getGlidePath() != null;
        add(findings, facts, Measure.atLeast(clearance, desired, "m"), citation,
                Projects.label(one.group()) + " clears the threshold by " + Words.m(clearance) + "; " + Words.m(desired) + " are desired.",
                (chosen ? "A smaller clearance was chosen: an aeronautical study must accept it" : "An aeronautical study must accept less")
                        + ", or move the row " + Words.m(moveM(facts, desired - clearance)) + " farther from the threshold.");
    }
}
