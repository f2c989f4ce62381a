package slopewright.checks.internal.data;

import java.util.Optional;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.Stop;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachHost;
import slopewright.model.RunwayEnd;
import slopewright.siting.ElementNames;

/**
 * The true bearing that was entered leads from the threshold to the other one: drawn from here it passes it by no more than the places of
 * both are known. Where a threshold has no place it is compared with the bearing that was entered at the other end, within the convergence
 * of the meridians, which on the longest runways is less than half a degree. Severity fail: the bearing decides what lies in the obstacle
 * surface.
 */
public final class RunwayBearingRule extends HostRule {
    private static final double CONVERGENCE_DEG = 0.5;
    private static final double HALF_TURN_DEG = 180;

    /** Made by the service loader. */
    public RunwayBearingRule() {
        super("DATA-15", Severity.FAIL);
    }

    @Override
    void check(ApproachHost host, OutcomeCollector outcomes) {
        RunwayEnd end = runwayEnd(host);
        Double bearing = end.getTrueBearingDeg();
        if (bearing == null) {
            throw Stop.notApplicable(Message.of("DATA-15.none-entered"));
        }
        Optional<Double> measured = RunwayGeometry.bearingDeg(end);
        if (measured.isPresent()) {
            double apart = RunwayGeometry.apartDeg(bearing, measured.get());
            double distance = RunwayGeometry.betweenThresholdsM(end).orElseThrow();
            double counted = Math.min(apart, HALF_TURN_DEG / 2);
            double beside = distance * Math.sin(Math.toRadians(counted));
            outcomes.about(end).measured(Measure.atMost(beside, RunwayGeometry.THRESHOLDS_M, "m"))
                    .step("beside", Words.m(distance), Words.deg(counted), Words.m(beside))
                    .saying("thresholds", Words.degrees(bearing), Words.degrees(measured.get()), Words.m(beside),
                            Words.m(RunwayGeometry.THRESHOLDS_M)).advising("correct").add();
            return;
        }
        Double back = RunwayGeometry.opposite(end).map(RunwayEnd::getTrueBearingDeg)
                .orElseThrow(() -> Stop.notApplicable(Message.of("DATA-15.nothing-to-compare")));
        double apart = RunwayGeometry.apartDeg(bearing, back + HALF_TURN_DEG);
        outcomes.about(end).measured(Measure.atMost(apart, CONVERGENCE_DEG, "deg"))
                .saying("reciprocal", Words.degrees(bearing), ElementNames.of(RunwayGeometry.opposite(end).orElseThrow()),
                        Words.degrees(back), Words.degrees(apart), Words.degrees(CONVERGENCE_DEG)).advising("correct").add();
    }
}
