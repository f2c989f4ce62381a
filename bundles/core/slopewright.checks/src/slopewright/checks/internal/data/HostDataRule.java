package slopewright.checks.internal.data;

import java.util.List;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Rule;
import slopewright.checks.internal.Missing;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.model.ApproachDirection;
import slopewright.model.ApproachHost;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;

/** Threshold or helipad, approach slope: what everything else hangs on. */
public final class HostDataRule implements Rule {

    @Override
    public String id() {
        return "DATA-01";
    }

    @Override
    public void check(ProjectEvaluation context, OutcomeCollector findings) {
        for (ApproachHost host : Projects.hosts(context.project())) {
            if (!host.getAids().isEmpty()) {
                List<String> missing = host instanceof RunwayEnd end ? ofRunwayEnd(end) : ofHelipad(host);
                Missing.report(findings, host, missing, "Place, elevation and direction of " + Projects.label(host) + " are known.");
            }
        }
    }

    private static List<String> ofRunwayEnd(RunwayEnd end) {
        Missing missing = new Missing();
        missing.unless(end.getThreshold() != null, "threshold place");
        missing.unless(end.getThresholdElevationM() != null, "threshold elevation");
        boolean otherEnd = Projects.runway(end).stream().flatMap(runway -> runway.getEnds().stream())
                .anyMatch(other -> other != end && other.getThreshold() != null);
        missing.unless(end.getTrueBearingDeg() != null || otherEnd, "true bearing, or the place of the other threshold");
        return missing.names();
    }

    private static List<String> ofHelipad(ApproachHost host) {
        Missing missing = new Missing();
        missing.unless(Projects.helipad(host).filter(pad -> pad.getPlace() != null).isPresent(), "helipad place");
        missing.unless(Projects.helipad(host).filter(pad -> pad.getElevationM() != null).isPresent(), "TLOF elevation");
        missing.unless(host instanceof ApproachDirection direction && direction.getTrueBearingDeg() != null,
                "true bearing of the approach");
        return missing.names();
    }
}
