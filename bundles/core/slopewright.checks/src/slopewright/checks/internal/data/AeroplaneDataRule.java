package slopewright.checks.internal.data;

import java.util.List;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Missing;
import slopewright.model.AeroplaneGroup;
import slopewright.model.util.Projects;

/** The aeroplanes in regular use decide the eye height. */
public final class AeroplaneDataRule extends AidRule {

    /** Made by the service loader. */
    public AeroplaneDataRule() {
        super("DATA-03", Severity.WARNING);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        if (!facts.atRunway()) {
            return;
        }
        Missing missing = new Missing();
        List<AeroplaneGroup> groups = facts.host().getRegularGroups();
        boolean otherTarget = facts.aid().getTargetEyeHeightM() != null
                || facts.aid().getHeightGroup() != null && facts.rules().crossingHeight().isPresent();
        missing.unless(!groups.isEmpty() || otherTarget, "aeroplane groups in regular use");
        for (AeroplaneGroup group : groups) {
            missing.unless(group.getEyeToWheelM() != null, "eye-to-wheel height of " + Projects.label(group));
            if (facts.host().getGlidePath() != null && !facts.hasLength("glide-path-distance-tolerance")) {
                missing.unless(group.getEyeToAntennaM() != null, "eye-to-antenna height of " + Projects.label(group));
            }
        }
        Missing.report(findings, facts.aid(), missing.names(), "The aeroplanes in regular use are described.");
    }
}
