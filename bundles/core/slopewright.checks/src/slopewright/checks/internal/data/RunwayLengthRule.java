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
 * The length of the runway is the distance between its thresholds with what each is displaced, as well as the places of both are known.
 * Severity fail: one of the three is wrong, and the place of a threshold and its displacement decide what is an obstacle and how the
 * wheels clear the extremity.
 */
public final class RunwayLengthRule extends HostRule {
    /** Made by the service loader. */
    public RunwayLengthRule() {
        super("DATA-17", Severity.FAIL);
    }

    @Override
    void check(ApproachHost host, OutcomeCollector outcomes) {
        RunwayEnd end = runwayEnd(host);
        double length = Projects.runway(end).map(Runway::getLengthM).orElseThrow(DataRules::nothingToCompare);
        double between = RunwayGeometry.betweenThresholdsM(end).orElseThrow(DataRules::nothingToCompare);
        double here = RunwayGeometry.displacedM(end);
        double there = RunwayGeometry.displacedM(RunwayGeometry.opposite(end).orElseThrow());
        double measured = between + here + there;
        outcomes.about(end).measured(Measure.within(length, measured, RunwayGeometry.THRESHOLDS_M, "m"))
                .step("runway-length", Words.m(between), Words.m(here), Words.m(there), Words.m(measured))
                .saying("compared", Words.m(length), Words.m(measured), Words.m(RunwayGeometry.THRESHOLDS_M)).advising("correct").add();
    }
}
