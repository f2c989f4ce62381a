package slopewright.checks.internal.eye;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.Words;
import slopewright.model.util.Projects;
import slopewright.standards.Citation;

/** The wheel clearance below which no study helps. */
public final class MinimumClearanceRule extends WheelClearance {

    /** Made by the service loader. */
    public MinimumClearanceRule() {
        super("WHEEL-02", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, Case one, Citation citation, OutcomeCollector findings) {
        boolean light = facts.host().getRegularGroups().stream().allMatch(group -> Boolean.TRUE.equals(group.getLightNonTurbojet()));
        boolean reduced = light && one.band().lightAeroplaneM().isPresent();
        double minimum = reduced ? one.band().lightAeroplaneM().orElseThrow() : one.band().minimumM();
        double clearance = facts.laid().mehtM() - one.eyeToWheelM();
        add(findings, facts, Measure.atLeast(clearance, minimum, "m"), citation,
                Projects.label(one.group()) + " clears the threshold by " + Words.m(clearance) + "; the minimum is " + Words.m(minimum)
                        + (reduced ? ", reduced for light aeroplanes without turbojets." : "."),
                "Move the row " + Words.m(moveM(facts, minimum - clearance)) + " farther from the threshold.");
    }
}
