package slopewright.checks.internal;

import slopewright.checks.Findings;
import slopewright.checks.Findings.Measure;
import slopewright.checks.Severity;
import slopewright.model.util.Projects;
import slopewright.standards.Citation;

/** The wheel clearance below which no study helps. */
public final class MinimumClearanceRule extends WheelClearance {

    /** Made by the service loader. */
    public MinimumClearanceRule() {
        super("WHEEL-02", "Minimum wheel clearance",
                "On the lowest on-slope signal each aeroplane group in regular use has at least the minimum wheel clearance over the"
                + " threshold; on a"
                        + " runway mainly used by light aeroplanes without turbojets the reduced one.", Severity.FAIL);
    }

    @Override
    void check(AidFacts facts, Case one, Citation citation, Findings findings) {
        boolean light = facts.host().getRegularGroups().stream().allMatch(group -> Boolean.TRUE.equals(group.getLightNonTurbojet()));
        boolean reduced = light && one.band().lightAeroplaneM().isPresent();
        double minimum = reduced ? one.band().lightAeroplaneM().orElseThrow() : one.band().minimumM();
        double clearance = SettingOut.height(facts.laid().eyeHeightM() - one.eyeToWheelM(), minimum);
        add(findings, facts, Measure.atLeast(clearance, minimum, "m"), citation,
                Projects.label(one.group()) + " clears the threshold by " + Words.m(clearance) + "; the minimum is " + Words.m(minimum)
                        + (reduced ? ", reduced for light aeroplanes without turbojets." : "."),
                "Move the row " + Words.m(moveM(facts, minimum - clearance)) + " farther from the threshold.");
    }
}
