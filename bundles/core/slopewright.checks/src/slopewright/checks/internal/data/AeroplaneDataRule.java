package slopewright.checks.internal.data;

import java.util.List;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Missing;
import slopewright.messages.Message;
import slopewright.model.AeroplaneGroup;
import slopewright.siting.ElementNames;

/** The aeroplanes in regular use decide the eye height. A warning: what rests on a missing one is not evaluated elsewhere. */
public final class AeroplaneDataRule extends AidRule {
    /** Made by the service loader. */
    public AeroplaneDataRule() {
        super("DATA-03", Severity.WARNING);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        facts.end();
        Missing missing = new Missing();
        List<AeroplaneGroup> groups = facts.host().getRegularGroups();
        boolean otherTarget = facts.aid().getTargetEyeHeightM() != null
                || facts.aid().getHeightGroup() != null && facts.rules().crossingHeight().isPresent();
        missing.unless(!groups.isEmpty() || otherTarget, "missing.aeroplane-groups");
        for (AeroplaneGroup group : groups) {
            missing.unless(group.getEyeToWheelM() != null, "missing.eye-to-wheel", ElementNames.of(group));
            if (facts.host().getGlidePath() != null && !facts.hasLength("glide-path-distance-tolerance")) {
                missing.unless(group.getEyeToAntennaM() != null, "missing.eye-to-antenna-of", ElementNames.of(group));
            }
        }
        missing.report(facts.aid(), outcomes, Message.of("DATA-03.complete"));
    }
}
