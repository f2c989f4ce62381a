package slopewright.checks.internal.data;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.messages.Words;
import slopewright.model.ApproachHost;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;

/**
 * The landing distance is no longer than the runway behind its threshold, to the metre to which both are declared. A warning: it decides no
 * obstacle and no clearance, only how far along the indicator may stand.
 */
public final class LandingDistanceDataRule extends HostRule {
    private static final double DECLARED_M = 1;

    /** Made by the service loader. */
    public LandingDistanceDataRule() {
        super("DATA-18", Severity.WARNING);
    }

    @Override
    void check(ApproachHost host, OutcomeCollector outcomes) {
        RunwayEnd end = runwayEnd(host);
        Double landing = end.getLandingDistanceM();
        Double length = Projects.runway(end).map(Runway::getLengthM).orElse(null);
        if (landing == null || length == null) {
            throw DataRules.nothingToCompare();
        }
        double displaced = RunwayGeometry.displacedM(end);
        double behind = length - displaced;
        outcomes.about(end).measured(Measure.atMost(landing, behind, "m").resolvedTo(DECLARED_M))
                .step("behind-threshold", Words.m(length), Words.m(displaced), Words.m(behind))
                .saying("compared", Words.m(landing), Words.m(behind)).advising("correct").add();
    }
}
