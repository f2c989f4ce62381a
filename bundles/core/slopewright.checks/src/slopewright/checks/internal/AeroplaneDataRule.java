package slopewright.checks.internal;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import slopewright.checks.Findings;
import slopewright.checks.Severity;
import slopewright.model.AeroplaneGroup;
import slopewright.model.util.Projects;

/** The aeroplanes in regular use decide the eye height. */
public final class AeroplaneDataRule extends AidRule {

    /** Made by the service loader. */
    public AeroplaneDataRule() {
        super("DATA-03", "Aeroplanes in regular use are known",
                "The aeroplane groups in regular use have an eye-to-wheel height, beside a glide path an eye-to-antenna height too.",
                Severity.WARNING, Stream.of(ROWS, BARS, Set.of("tri-colour", "pulsating", "alignment-panels")).flatMap(Set::stream)
                        .collect(Collectors.toUnmodifiableSet()));
    }

    @Override
    void check(AidFacts facts, Findings findings) {
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
