package slopewright.checks.internal.data;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.ProjectRule;
import slopewright.checks.internal.Stop;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Message;
import slopewright.model.ApproachHost;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;

/**
 * A rule about the data of runway ends and approach directions: it goes through those that have an aid, and through the other end of their
 * runway where it has a place or an elevation, for what is said there is a second statement about the runway.
 */
abstract class HostRule extends ProjectRule {
    HostRule(String id, Severity severity) {
        super(id, severity);
    }

    @Override
    public final void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        for (ApproachHost host : Projects.hosts(evaluation.project())) {
            if (!host.getAids().isEmpty() || isSecondStatement(host)) {
                AidRule.guarded(host, outcomes, () -> check(host, outcomes));
            }
        }
    }

    private static boolean isSecondStatement(ApproachHost host) {
        return host instanceof RunwayEnd end && (end.getThreshold() != null || end.getThresholdElevationM() != null)
                && RunwayGeometry.opposite(end).filter(far -> !far.getAids().isEmpty()).isPresent();
    }

    /** Checks one runway end or approach direction. */
    abstract void check(ApproachHost host, OutcomeCollector outcomes);

    /** Returns the runway end; ends the rule at a helipad. */
    static RunwayEnd runwayEnd(ApproachHost host) {
        if (host instanceof RunwayEnd end) {
            return end;
        }
        throw Stop.notApplicable(Message.of("outcome.not-a-runway"));
    }
}
