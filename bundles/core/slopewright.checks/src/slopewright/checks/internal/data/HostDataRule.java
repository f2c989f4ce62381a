package slopewright.checks.internal.data;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.Missing;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Message;
import slopewright.model.ApproachDirection;
import slopewright.model.ApproachHost;
import slopewright.model.Helipad;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.ElementNames;

/** Threshold or helipad, approach slope: what everything else hangs on. Severity fail: without them nothing is known. */
public final class HostDataRule extends ProjectRule {
    /** Made by the service loader. */
    public HostDataRule() {
        super("DATA-01", Severity.FAIL);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        for (ApproachHost host : Projects.hosts(evaluation.project())) {
            if (!host.getAids().isEmpty()) {
                Missing missing = host instanceof RunwayEnd end ? ofRunwayEnd(end) : ofHelipad(host);
                missing.report(host, outcomes, Message.of("DATA-01.complete", ElementNames.of(host)));
            }
        }
    }

    private static Missing ofRunwayEnd(RunwayEnd end) {
        Missing missing = new Missing();
        missing.unless(end.getThreshold() != null, "missing.threshold");
        missing.unless(end.getThresholdElevationM() != null, "missing.threshold-elevation");
        boolean otherEnd = Projects.runway(end).stream().flatMap(runway -> runway.getEnds().stream())
                .anyMatch(far -> far != end && far.getThreshold() != null);
        missing.unless(end.getTrueBearingDeg() != null || otherEnd, "missing.bearing-or-threshold");
        return missing;
    }

    private static Missing ofHelipad(ApproachHost host) {
        Missing missing = new Missing();
        missing.unless(Projects.helipad(host).map(Helipad::getPlace).isPresent(), "missing.helipad-place");
        missing.unless(Projects.helipad(host).map(Helipad::getElevationM).isPresent(), "missing.tlof-elevation");
        missing.unless(host instanceof ApproachDirection direction && direction.getTrueBearingDeg() != null, "missing.approach-bearing");
        return missing;
    }
}
